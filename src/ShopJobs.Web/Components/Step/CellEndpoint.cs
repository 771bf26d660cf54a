using Microsoft.AspNetCore.Http.Features;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Components.Step;

/// <summary>
/// Where a tablet's script reports what has happened at a car: with the person's session, from this site only, as JSON of a few
/// kilobytes. The same id gets the same answer however often it is sent.
/// </summary>
internal static class CellEndpoint
{
    internal const string Path = "/cells";
    private const int LargestBody = 16 * 1024;

    internal static void MapCells(this IEndpointRouteBuilder app) => app.MapPost(Path, AnswerAsync).DisableAntiforgery();

    private static async Task<IResult> AnswerAsync(HttpContext http, SessionDesk sessions, PeopleShelf people, CarDesk desk, CancellationToken cancellation)
    {
        if (!IsFromThisSite(http.Request))
        {
            return No(StatusCodes.Status403Forbidden, "This came from another site and was not taken.");
        }

        if (!http.Request.HasJsonContentType())
        {
            return No(StatusCodes.Status415UnsupportedMediaType, "A report is JSON.");
        }

        if (http.Request.ContentLength > LargestBody)
        {
            return No(StatusCodes.Status413PayloadTooLarge, "That is too long for a report and was not taken.");
        }

        if (http.Features.Get<IHttpMaxRequestBodySizeFeature>() is { IsReadOnly: false } limit)
        {
            limit.MaxRequestBodySize = LargestBody;
        }

        if (await sessions.CheckAsync(http.User, touch: false, cancellation) is not { } here)
        {
            return No(StatusCodes.Status401Unauthorized, PersonCookieEvents.SignedOut);
        }

        var report = await CellReport.ReadAsync(http.Request.Body, cancellation);
        if (report is not { Id: { } id } || id == Guid.Empty)
        {
            return No(StatusCodes.Status400BadRequest, "This is not a report: load the page again.");
        }

        var (command, problem) = report.ToCommand();
        if (command is null)
        {
            return No(StatusCodes.Status400BadRequest, $"Not taken: {problem}.");
        }

        if (report.ForLeaver == true && report.Person == here.Person.Value)
        {
            return No(StatusCodes.Status400BadRequest, "This is reported for somebody who has left: load the page again.");
        }

        var car = new CarId(report.Car);
        if (report.Person != here.Person.Value)
        {
            if (desk.Earlier(car, new CommandId(id), command) is { } earlier)
            {
                return Results.Json(CellAnswer.Of(earlier));
            }

            if (await NotForAnother(report, command, here, people, cancellation) is { } no)
            {
                return Results.Json(no, statusCode: StatusCodes.Status409Conflict);
            }
        }

        var answer = CellAnswer.Of(await desk.RunAsync(car, new CommandId(id), here, command, cancellation: CancellationToken.None));
        if (answer is { Saved: true, Repeated: false } && report.Late != true && command is RecordTorque { Kind: not TorqueKind.SettingConfirmed }
            && SecondThoughts.OnPull(desk.Read(car, here.Person).State, here.Person) is { } thought)
        {
            answer = answer with { Thought = SecondThoughtWords.Of(thought) };
        }

        return Results.Json(answer, statusCode: answer switch
        {
            { Saved: true } => StatusCodes.Status200OK,
            { TryAgain: true } => StatusCodes.Status503ServiceUnavailable,
            _ => StatusCodes.Status422UnprocessableEntity,
        });
    }

    // What somebody did who has left is saved by the lead, as reported by him. Null where it is.
    private static async Task<CellAnswer?> NotForAnother(CellReport report, Report command, Present here, PeopleShelf people, CancellationToken cancellation) =>
        !await people.HasLeftAsync(new PersonId(report.Person), cancellation)
            ? CellAnswer.No("Somebody else did this and is not signed in. Whoever did it signs in here; then it is saved.")
        : !here.May(Right.Lead) ? CellAnswer.No("Whoever did this does not work here any more. The lead signs in here and saves it.")
        : command is DeclareCondition ? CellAnswer.No("Whoever said this of the car does not work here any more, and it is not so for ever: discard it, and say how the car is now.")
        : report.ForLeaver == true ? null
        : CellAnswer.No("Whoever did this does not work here any more. You may save it as reported by you: it is recorded, does not count, and what was pulled is held until it is decided.") with
        {
            MayReport = true,
        };

    private static bool IsFromThisSite(HttpRequest request) => request.Headers.Origin.ToString() is { Length: > 0 } origin
        ? Uri.TryCreate(origin, UriKind.Absolute, out var from) && from.Authority == request.Host.Value
        : request.Headers["Sec-Fetch-Site"] == "same-origin";

    private static IResult No(int status, string words) => Results.Json(CellAnswer.No(words), statusCode: status);
}
