using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Fasteners;
using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Accounts;
using ShopJobs.Web.Components.Look;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Desk;
using ShopJobs.Web.Shop;

namespace ShopJobs.Web.Components.Parts;

/// <summary>The wheel stacks of a car: the lead's ordinary rows. Each command returns null, or why not and what to do.</summary>
public sealed class StackDesk(ShopChange changes, ShopClock clock)
{
    /// <summary>Enters a stack, or changes one.</summary>
    public Task<string?> SaveAsync(CarId car, StackForm form, CancellationToken cancellation = default) =>
        ChangeAsync(async (shop, by) =>
        {
            if (new StackFormValidator().Validate(form) is { IsValid: false } broken)
            {
                return string.Join(" ", broken.Errors.Select(error => error.ErrorMessage));
            }

            var name = Typed.Clean(form.Name);
            if (!await shop.Cars.AnyAsync(row => row.Id == car, cancellation))
            {
                return "This car is not in the book.";
            }

            if (await shop.WheelStacks.AnyAsync(other => other.CarId == car && other.Name == name && other.Id != form.Id, cancellation))
            {
                return $"This car has a wheel stack called {name} already. Change that one, or give this one another name.";
            }

            var row = await shop.WheelStacks.FirstOrDefaultAsync(stack => stack.Id == form.Id, cancellation);
            if (row is null && form.Revision == default)
            {
                row = new WheelStackRow { Id = form.Id, CarId = car, Name = name, WheelPad = "", WheelSeat = "", NutSeat = "", NutThread = "" };
                shop.WheelStacks.Add(row);
            }
            else if (row is null || row.CarId != car || row.Revision != form.Revision)
            {
                return ShopChange.Meanwhile;
            }

            Copy(form, row);
            row.Touch(by, clock.Now);
            return null;
        }, cancellation);

    /// <summary>Removes a stack that the car no longer has.</summary>
    public Task<string?> RemoveAsync(CarId car, Guid stack, CancellationToken cancellation = default) =>
        ChangeAsync(async (shop, _) =>
        {
            if (await shop.WheelStacks.FirstOrDefaultAsync(row => row.Id == stack && row.CarId == car, cancellation) is not { } row)
            {
                return "That wheel stack is not here any more. Load the page again.";
            }

            shop.WheelStacks.Remove(row);
            return null;
        }, cancellation);

    private Task<string?> ChangeAsync(Func<ShopDbContext, PersonId, Task<string?>> change, CancellationToken cancellation) =>
        changes.RunAsync(Right.Lead, PartDesk.NotYours, change, cancellation);

    private static void Copy(StackForm form, WheelStackRow row)
    {
        row.Name = Typed.Clean(form.Name);
        row.HubFlange = Typed.Clean(form.HubFlange);
        row.DiscHat = Typed.Clean(form.DiscHat);
        row.Spacer = Typed.Clean(form.Spacer);
        row.WheelPad = Typed.Clean(form.WheelPad);
        row.Washer = Typed.Clean(form.Washer);
        row.WheelSeat = Seat(form.WheelSeat);
        row.NutSeat = Seat(form.NutSeat);
        row.NutThread = Typed.Clean(form.NutThread);
        row.ClosedNutDepth = PartText.ClosedDepth(Typed.Clean(form.NutEnd));
        row.NutClass = NutClass.TryParse(Typed.Clean(form.NutClass), out var nut) ? nut.Name : null;
    }

    private static string Seat(string text) => PartText.Seat(Typed.Clean(text), out var value, out var problem)
        ? value.ToString()
        : throw new InvalidOperationException(problem);
}
