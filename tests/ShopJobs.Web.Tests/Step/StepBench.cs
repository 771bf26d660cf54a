using Bunit;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tests.Logbook.Workshop;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.Step;

/// <summary>A car of the test workshop as the step's components see it.</summary>
internal sealed class StepBench
{
    public static readonly Car Row = new() { Id = new CarId(new Guid(1, 0, 0, new byte[8])), CustomerId = new CustomerId(Guid.NewGuid()), Name = "Blue", Model = "Brennock 220", Mark = "DEMO 220" };

    public CarAtWork Car { get; } = new();

    public JobId Job { get; private set; }

    /// <summary>A job of the test wheel procedure on the left wheel.</summary>
    public static StepBench Wheel() => With(TestProcedures.Wheels(1, 3, 5, 2, 4));

    /// <summary>A job of a test procedure at one place.</summary>
    public static StepBench With(Domain.Procedures.Procedure procedure, string place = TestRegister.Left)
    {
        var bench = new StepBench();
        bench.Job = bench.Car.StartJob(procedure, place);
        return bench;
    }

    /// <summary>The wheel's nuts.</summary>
    public IReadOnlyList<Domain.Procedures.JointPosition> Nuts => Car.Positions(TestRegister.Nut, TestRegister.Left);

    /// <summary>Faces signed, wheel up, nuts opened and hand-tight: the first pull is next.</summary>
    public StepBench HandTight()
    {
        Car.Do(TestPerson.Tess, CarWork.Sign(Job, $"faces@{TestRegister.Left}", "clean"));
        Car.Declare(TestRegister.WheelUp);
        Car.Open(TestPerson.Tess, Job, Nuts);
        Car.ByHand(TestPerson.Tess, Job, "nuts", Nuts);
        return this;
    }

    /// <summary>The scene of a step at a place, the left wheel where none is named, for a person.</summary>
    public StepScene Scene(string step, TestPerson? person = null, string place = TestRegister.Left)
    {
        var who = person ?? TestPerson.Tess;
        var tools = new[] { TestTools.Click, TestTools.Dial, TestTools.Overdue, TestTools.Small, TestTools.Angle }.ToDictionary(id => id, Car.Tool);
        var now = Car.As(who) with { Tool = id => tools.GetValueOrDefault(id, ToolState.Empty) };
        var reading = new CarReading(Row.Id, Car.State, now, tools, "");
        var here = new Present(who.Id, who.Name, "TT", default, Car.SessionOf(who), who.Rights);
        var names = TestPerson.All.ToDictionary(one => one.Id, one => one.Name);
        return new StepScene(Row, reading, Car.State.Jobs[Job], Car.Placed(Job).Step($"{step}@{place}")!, here, names);
    }

    /// <summary>The tools beside the next pull of a scene.</summary>
    public static IReadOnlyList<ToolOffer> Offers(StepScene scene) => scene.Next is NextAction.PullNow { Cell: var cell }
        ? ToolOffer.For(scene.Reading, scene.Job, cell)
        : [];

    /// <summary>The offer of one tool.</summary>
    public static ToolOffer Offer(StepScene scene, ToolId tool) => Offers(scene).Single(offer => offer.Id == tool);

    /// <summary>Draws the joint and what is next on it, with a tool in hand.</summary>
    public static IRenderedComponent<IComponent> Draw(BunitContext context, StepScene scene, ToolId? tool = null)
    {
        var offer = tool is { } id ? Offer(scene, id) : null;
        var pad = offer is not null && scene.Next is NextAction.PullNow { Cell: var cell } ? new KeypadCell(scene, cell, offer) : null;
        return context.Render(builder =>
        {
            builder.OpenComponent<WorkPicture>(0);
            builder.AddComponentParameter(1, nameof(WorkPicture.Scene), scene);
            builder.AddComponentParameter(2, nameof(WorkPicture.Pad), pad);
            builder.CloseComponent();
            builder.OpenComponent<WorkNext>(3);
            builder.AddComponentParameter(4, nameof(WorkNext.Scene), scene);
            builder.AddComponentParameter(5, nameof(WorkNext.Offers), Offers(scene));
            builder.AddComponentParameter(6, nameof(WorkNext.Tool), offer);
            builder.AddComponentParameter(7, nameof(WorkNext.Pad), pad);
            builder.CloseComponent();
        });
    }
}
