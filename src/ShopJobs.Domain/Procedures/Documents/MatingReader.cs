using ShopJobs.Domain.Fasteners;
using UnitsNet;

namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>Reads what a group says of the parts that its fastener is screwed into and presses on.</summary>
internal sealed class MatingReader(ProblemsFound problems)
{
    private const decimal LeastEngaged = 0.5m;
    private const decimal MostEngaged = 200;
    private const decimal LeastStress = 10;
    private const decimal MostStress = 3000;

    public NutClass? Nut(MapReader map)
    {
        if (map.TextIfAny("nut") is not { } text)
        {
            return null;
        }

        if (NutClass.TryParse(text, out var nut))
        {
            return nut;
        }

        problems.Error(map.At("nut"), $"{Wording.Quote(text)} is not a nut class of ISO 898-2", "write 5, 6, 8, 9, 10 or 12, or 04 or 05 for a thin nut");
        return null;
    }

    public EngagedThread? Engaged(MapReader map)
    {
        if (!map.Has("engaged") || MapReader.Of(map.At("engaged"), problems, ["length", "tensile"]) is not { } engaged)
        {
            return null;
        }

        var length = engaged.Needed("length") is { } at ? Amounts.With(at, problems, "mm", LeastEngaged, MostEngaged) : null;
        var tensile = engaged.Needed("tensile") is { } strength ? Stress(strength) : null;
        return length is { } millimetres && tensile is { } stress ? new EngagedThread(Length.FromMillimeters((double)millimetres), stress) : null;
    }

    /// <summary>Reckoned with on a flat seat only.</summary>
    public Pressure? BearingLimit(MapReader map, Seat? seat)
    {
        if (!map.Has("bearing-limit"))
        {
            return null;
        }

        if (seat is not FlatSeat)
        {
            problems.Error(map.At("bearing-limit"), "The pressure under the head is computed on a flat seat only", "write the flat seat, or delete the line");
            return null;
        }

        return Stress(map.At("bearing-limit"));
    }

    private Pressure? Stress(DocumentNode node) =>
        Amounts.With(node, problems, "MPa", LeastStress, MostStress) is { } value ? Pressure.FromMegapascals((double)value) : null;
}
