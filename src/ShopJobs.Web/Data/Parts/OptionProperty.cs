namespace ShopJobs.Web.Data.Parts;

/// <summary>What a maker may state of an option. Stored by name: a name is never changed.</summary>
public enum OptionProperty
{
    Thread,
    Strength,
    Length,
    Seat,
    Torque,
    Jam,
    Condition,
    NutSeat,
    NutThread,
    NutEnd,
    NutClass,
    Pieces,
    Price,
}
