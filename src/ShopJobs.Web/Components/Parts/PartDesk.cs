using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Parts;

/// <summary>A group of a job on a car.</summary>
public readonly record struct GroupOfJob(CarId Car, JobId Job, string Group);

/// <summary>
/// Options entered, removed and chosen: the lead's ordinary rows. Each command returns null, or why not and what to do.
/// </summary>
public sealed class PartDesk(ShopChange changes, CarDesk cars, ShopClock clock)
{
    internal const string NotYours = "Parts are compared and chosen by the lead. Sign in as the lead.";
    internal const string OptionChanged = "The values of this option changed meanwhile: read the page again, then choose.";
    internal const string StacksChanged = "The wheel stacks changed meanwhile: read the page again, then choose.";
    internal const string OthersChanged = "The options it is compared with changed meanwhile: read the page again, then choose.";
    private const string Gone = "That option is not here any more. Load the page again.";
    private const string NotHere = "There is no such group on a job of this car. Go to it from the car's page.";
    private const string Ended = "This job has ended. What was compared and chosen for it stays as it was.";

    /// <summary>Enters an option, or changes one.</summary>
    public Task<string?> SaveAsync(GroupOfJob on, OptionForm form, CancellationToken cancellation = default) =>
        ChangeAsync(on, async (shop, parts, by) =>
        {
            var jam = parts.Joint.Asked.Jam is not null;
            if (new OptionFormValidator(jam).Validate(form) is { IsValid: false } broken)
            {
                return string.Join(" ", broken.Errors.Select(error => error.ErrorMessage));
            }

            var (name, maker) = (Typed.Clean(form.Name), Typed.Clean(form.Maker));
            if (parts.Options.Any(other => other.Id != form.Id && Same(other.Name, name) && Same(other.Maker, maker)))
            {
                return $"{maker} {name} is compared here already. Change that one, or write what tells the two kits apart into the name.";
            }

            var row = await shop.PartOptions.Include(option => option.Values).FirstOrDefaultAsync(option => option.Id == form.Id, cancellation);
            if (row is null && form.Revision != default)
            {
                return Gone;
            }

            if (row is null)
            {
                row = new OptionRow { Id = form.Id, JobId = on.Job, GroupId = on.Group, Name = name, Maker = maker };
                shop.PartOptions.Add(row);
            }
            else if (row.JobId != on.Job || row.GroupId != on.Group || row.Revision != form.Revision)
            {
                return ShopChange.Meanwhile;
            }

            (row.Name, row.Maker, row.Evidence, row.OwnNut) = (name, maker, form.Evidence, form.OwnNut);
            Write(row, form, jam);
            row.Touch(by, clock.Now);
            return null;
        }, cancellation);

    /// <summary>Takes an option out of the comparison; not the one that is chosen.</summary>
    public Task<string?> RemoveAsync(GroupOfJob on, PartOptionId option, CancellationToken cancellation = default) =>
        ChangeAsync(on, async (shop, parts, _) =>
        {
            if (parts.Chosen?.OptionId == option)
            {
                return "This option is chosen. Choose another one first; then it can go.";
            }

            if (parts.Options.All(known => known.Id != option))
            {
                return Gone;
            }

            shop.PartOptions.Remove(await shop.PartOptions.Include(row => row.Values).FirstAsync(row => row.Id == option, cancellation));
            return null;
        }, cancellation);

    /// <summary>Chooses an option, with the reason. Earlier choices stay.</summary>
    /// <param name="shown">Everything compared, as it was looked at: a choice never rests on values or a wheel stack that nobody saw.</param>
    public Task<string?> ChooseAsync(GroupOfJob on, PartOptionId option, PartsOnJob shown, string reason, CancellationToken cancellation = default) =>
        ChangeAsync(on, (shop, parts, by) =>
        {
            var why = Typed.Clean(reason);
            var refusal = why.Length == 0 ? "Write in one sentence why this one."
                : why.Length > PartChoice.ReasonLength ? $"The reason takes at most {PartChoice.ReasonLength} letters. Shorten it."
                : NotAsShown(parts, shown, option);
            if (refusal is not null)
            {
                return Task.FromResult<string?>(refusal);
            }

            var compared = parts.Comparison.Options.First(one => one.Option.Id == option);
            if (!compared.Verdict.CanBeChosen)
            {
                return Task.FromResult<string?>($"{compared.Option} does not fit: {string.Join(" ", compared.Verdict.DoesNotFit)}");
            }

            shop.PartChoices.Add(new PartChoice
            {
                JobId = on.Job,
                GroupId = on.Group,
                OptionId = option,
                Option = compared.Option.ToString(),
                Reason = why,
                Cautions = string.Join('\n', compared.Verdict.Cautions),
                Others = string.Join('\n', parts.Comparison.Options.Where(one => one != compared).Select(Words)),
                Mark = parts.MarkOf(option),
                At = clock.Now,
                By = by,
            });
            return Task.FromResult<string?>(null);
        }, cancellation);

    private Task<string?> ChangeAsync(
        GroupOfJob on, Func<ShopDbContext, PartsOnJob, PersonId, Task<string?>> change, CancellationToken cancellation) =>
        changes.RunAsync(
            Right.Lead,
            NotYours,
            async (shop, by) =>
            {
                var car = cars.Read(on.Car, by);
                return await PartShelf.ReadAsync(shop, car, on.Job, on.Group, cancellation) is not { } parts ? NotHere
                    : !car.State.Jobs[on.Job].IsRunning ? Ended
                    : await change(shop, parts, by);
            },
            cancellation);

    private static void Write(OptionRow row, OptionForm form, bool jam)
    {
        row.Values.RemoveAll(value => !IsStated(OptionField.Of(value.Property)));
        foreach (var field in OptionField.All.Where(IsStated))
        {
            var (text, source) = (Typed.Clean(form.Values[field.Property].Text), Typed.Clean(form.SourceOf(field.Property)));
            if (row.Values.Find(value => value.Property == field.Property) is { } known)
            {
                (known.Text, known.Source) = (text, source);
            }
            else
            {
                row.Values.Add(new OptionValue { OptionId = row.Id, Property = field.Property, Text = text, Source = source });
            }
        }

        bool IsStated(OptionField field) => OptionFormValidator.Asked(field, form, jam) && !form.Values[field.Property].NotStated;
    }

    private static string? NotAsShown(PartsOnJob now, PartsOnJob shown, PartOptionId option) =>
        now.Options.All(row => row.Id != option) ? Gone
        : !AreAlike(now.Options.Where(row => row.Id == option), shown.Options.Where(row => row.Id == option)) ? OptionChanged
        : !AreAlike(now.StacksUnder, shown.StacksUnder) ? StacksChanged
        : !AreAlike(now.Options, shown.Options) ? OthersChanged
        : null;

    private static bool AreAlike(IEnumerable<TrackedRow> one, IEnumerable<TrackedRow> other) =>
        one.Select(row => row.Revision).ToHashSet().SetEquals(other.Select(row => row.Revision));

    private static bool Same(string one, string other) => string.Equals(one, other, StringComparison.OrdinalIgnoreCase);

    private static string Words(ComparedOption other) =>
        other.Verdict.CanBeChosen ? other.Option.ToString() : $"{other.Option}, does not fit: {string.Join(" ", other.Verdict.DoesNotFit)}";
}
