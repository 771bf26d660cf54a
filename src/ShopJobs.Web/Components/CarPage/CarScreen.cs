using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Live;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Logbook;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.CarPage;

/// <summary>A page about one car: reads it, keeps it up to date by notices, and runs commands on it. It decides nothing.</summary>
public abstract class CarScreen : LiveScreen
{
    [Parameter]
    public Guid Id { get; set; }

    [Inject]
    protected CarDesk Desk { get; set; } = default!;

    [Inject]
    protected CarRows Rows { get; set; } = default!;

    [Inject]
    protected WhoIsHere Who { get; set; } = default!;

    /// <summary>The car as it stands; null while it is read for the first time, or when there is none.</summary>
    protected CarReading? Reading { get; private set; }

    /// <summary>The car's row.</summary>
    protected Car? Car { get; private set; }

    /// <summary>Who looks.</summary>
    protected Present? Present { get; private set; }

    /// <summary>True when there is no such car.</summary>
    protected bool Missing { get; private set; }

    /// <summary>What became of the last command.</summary>
    protected DeskAnswer? Answer { get; set; }

    protected CarId CarId => new(Id);

    protected override Task OnInitializedAsync() => ReadAsync();

    protected override bool Matters(LogbookNotice notice) => notice.Logbook.Owner == Id || notice.Logbook.Kind == LogbookKind.Tool;

    protected override async Task ReadAsync()
    {
        Present = await Who.LookingAsync();
        Car = await Rows.FindAsync(CarId);
        Missing = Car is null;
        Reading = Car is null ? null : Desk.Read(CarId, Present?.Person);
    }

    /// <summary>Runs a command in the name of who is signed in now.</summary>
    protected async Task<DeskAnswer> RunAsync(Report command, params IReadOnlyList<NewContent> contents)
    {
        Answer = await Who.ActingAsync() is { } present
            ? await Desk.RunAsync(CarId, new CommandId(Guid.NewGuid()), present, command, contents)
            : DeskAnswer.Failed(ShopChange.Locked);
        await ReadAsync();
        return Answer;
    }

    /// <summary>Takes the answer of a signed command and reads the page again; nothing where nobody signed.</summary>
    protected async Task TakeAsync(DeskAnswer? answer)
    {
        if (answer is not null)
        {
            Answer = answer;
            await ReadAsync();
        }
    }
}
