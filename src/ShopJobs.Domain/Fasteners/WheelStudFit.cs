using UnitsNet;

namespace ShopJobs.Domain.Fasteners;

/// <summary>
/// Whether a stud fits its stack of parts. Engaged at least one diameter in steel, two threads through an open nut (US Army
/// TB 43-0218, par. 7); a stud that bottoms in a closed nut takes the torque itself and clamps nothing.
/// </summary>
/// <param name="Problems">What does not fit, each a sentence with its figures; empty where the stud fits.</param>
public sealed record WheelStudFit(IReadOnlyList<string> Problems)
{
    /// <summary>Engaged thread in nominal diameters, steel nut: TB 43-0218, par. 7a.</summary>
    public const double LeastDiameters = 1;

    /// <summary>Threads through an open nut: TB 43-0218, par. 7b.</summary>
    public const double ThreadsShowing = 2;

    /// <summary>True where there is nothing against the stud.</summary>
    public bool Fits => Problems.Count == 0;

    /// <summary>Judges a stack.</summary>
    public static WheelStudFit Of(WheelStudStack stack)
    {
        ArgumentNullException.ThrowIfNull(stack);
        return new WheelStudFit([.. ProblemsOf(stack)]);
    }

    private static IEnumerable<string> ProblemsOf(WheelStudStack stack)
    {
        var needed = stack.Thread.NominalDiameter * LeastDiameters;
        if (stack.Engaged < needed)
        {
            yield return FormattableString.Invariant(
                $"Engaged {stack.Engaged.Millimeters:0.#} mm ({stack.Turns:0.#} turns), and at least one diameter, {needed.Millimeters:0.#} mm, is needed: ")
                + "use a longer stud or a thinner stack.";
        }

        if (stack.RoomInClosedNut is { } room)
        {
            if (room <= Length.Zero)
            {
                yield return FormattableString.Invariant($"The stud bottoms in the closed nut by {-room.Millimeters:0.#} mm: ")
                    + "the torque goes into the nut's bottom and clamps nothing. Use an open or deeper nut, or a shorter stud.";
            }
        }
        else if (stack.Showing < stack.Thread.Pitch * ThreadsShowing)
        {
            yield return FormattableString.Invariant(
                $"{stack.Showing / stack.Thread.Pitch:0.#} threads show beyond the open nut, and two are needed: ")
                + "use a longer stud, or a closed nut that is deep enough.";
        }
    }
}
