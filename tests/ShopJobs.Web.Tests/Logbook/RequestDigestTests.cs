using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Tools;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Tests.Logbook;

/// <summary>
/// What is kept of a request must read the same in every later program, or a command sent again over an update would be taken for
/// another one. The digests are those of the first program that kept any.
/// </summary>
public sealed class RequestDigestTests
{
    private static readonly CarId Car = new(Guid.Parse("b9a2f2a6-0000-4000-8000-000000000001"));
    private static readonly JobId Job = new(Guid.Parse("b9a2f2a6-0000-4000-8000-000000000002"));
    private static readonly ToolId Tool = new(Guid.Parse("b9a2f2a6-0000-4000-8000-000000000003"));
    private static readonly PersonId Person = new(Guid.Parse("b9a2f2a6-0000-4000-8000-000000000004"));
    private static readonly ContentDigest Text = new(new string('0', 64));
    private static readonly JointPosition Nut = new("wheel.nut", "front-left", 3);

    private static readonly Dictionary<string, Command> Commands = new()
    {
        ["pull"] = new RecordTorque(Job, "wheel-nuts", Nut, 1, 2, 3, TorqueKind.SettingConfirmed, EnteredTorque.Parse("81.5 lbf·ft"), Tool, [Person]),
        ["pull with run-down"] = new RecordTorque(Job, "hub", Nut, 1, 1, 0, TorqueKind.Reading, EnteredTorque.Parse("110"), Tool, [])
        {
            RunDown = EnteredTorque.Parse("6.50"),
        },
        ["condition"] = new DeclareCondition([new CarCondition("stand", "wheel-up"), new CarCondition("name", "Ünder <“&'+/> line\n")]),
        ["step"] = new ConfirmStep(Job, "faces@front-left", ["a", "b"], [new MeasuredValue("depth", 12.50m, "mm")], true, Text, "00ff"),
        ["open"] = new OpenPositions([Nut, Nut with { Number = 4 }], null, Text),
        ["void"] = new VoidEntry(12, null, Text),
        ["release"] = new Release(ReleaseKind.Road, 48_210.5m, null, "ab"),
        ["witness"] = new Witness(Job, "wheel-nuts", "front-left", 2, WitnessMethod.FirstMovement, false, Text, "cd"),
    };

    [Theory]
    [InlineData("pull", "72a01b3364d68079d6997f527d0c41d4b08c8b16")]
    [InlineData("pull with run-down", "d9f5839b4d58011433d7c4bf3b8f0fef91a85d55")]
    [InlineData("condition", "9f6973a6f6e28486cf4da09f24e926f481f233c5")]
    [InlineData("step", "dff6f6780346a6a0e1e0f1c2bbc26d3dcaf0b00e")]
    [InlineData("open", "6e9edac8e82d74b4dd39e92de0896bf65cf39e68")]
    [InlineData("void", "bb7693a82ddf1cfbfe64530c6f78897529692781")]
    [InlineData("release", "4737c5f442a49e40076efb133029c8606a6322cb")]
    [InlineData("witness", "15a2a8d9ac2b167f91fd6dd53f375382821536bd")]
    public void Same_request_has_the_digest_it_always_had(string request, string digest) =>
        Assert.Equal(digest, Convert.ToHexStringLower(RequestDigest.Of(Car, Commands[request]))[..40]);

    [Fact]
    public void Another_car_another_kind_and_another_field_are_other_requests()
    {
        var pull = (RecordTorque)Commands["pull"];
        var digests = new object[] { pull, pull with { Visit = 4 }, pull with { Value = EnteredTorque.Parse("81.6 lbf·ft") }, Commands["open"] }
            .Select(command => Convert.ToHexStringLower(RequestDigest.Of(Car, command)))
            .Append(Convert.ToHexStringLower(RequestDigest.Of(new CarId(Guid.Empty), pull)));

        Assert.Distinct(digests);
    }

    [Fact]
    public void A_text_under_another_salt_is_the_same_request() => Assert.Equal(
        RequestDigest.Of(Car, new VoidEntry(12, null, Text)),
        RequestDigest.Of(Car, new VoidEntry(12, null, new ContentDigest(new string('7', 64)))));
}
