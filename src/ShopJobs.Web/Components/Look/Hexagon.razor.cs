using System.Globalization;
using Microsoft.AspNetCore.Components;
using ShopJobs.Domain.Logbook;

namespace ShopJobs.Web.Components.Look;

/// <summary>One position, or a whole joint by its worst position, as a nut seen from above.</summary>
public sealed partial class Hexagon
{
    [Parameter, EditorRequired]
    public PositionState State { get; set; }

    /// <summary>What lies beneath a held, doubted or due mark; at torque when not given, open under held.</summary>
    [Parameter]
    public PositionState? Under { get; set; }

    /// <summary>Stages done, for a staged position.</summary>
    [Parameter]
    public int Stage { get; set; }

    /// <summary>Stages in all, for a staged position.</summary>
    [Parameter]
    public int Stages { get; set; }

    /// <summary>Number of the position, drawn inside.</summary>
    [Parameter]
    public int? Number { get; set; }

    /// <summary>Edge of the drawing in CSS pixels.</summary>
    [Parameter]
    public int Size { get; set; } = 40;

    /// <summary>The record behind it is void.</summary>
    [Parameter]
    public bool Void { get; set; }

    private PositionState Base => State switch
    {
        PositionState.Held => Under ?? PositionState.Held,
        PositionState.Doubted or PositionState.Due => Under ?? PositionState.AtTorque,
        _ => State,
    };

    private bool IsSolid => Base is PositionState.AtTorque or PositionState.Checked or PositionState.Settled;

    private double Fraction => Stages > 0 ? (double)Stage / Stages : 0;

    private string Css => (Void, State) switch
    {
        (true, _) => "is-void",
        (_, PositionState.Held) => "is-held",
        (_, PositionState.Doubted or PositionState.Due) => "is-marked",
        _ when IsSolid => "is-good",
        _ => "",
    };

    private string Said
    {
        get
        {
            var word = PositionWords.Of(State, Stage, Stages) + (Void ? ", void" : "");
            return Number is { } number ? string.Create(CultureInfo.InvariantCulture, $"{number}: {word}") : word;
        }
    }
}
