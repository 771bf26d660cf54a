using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Visits;

/// <summary>Where a car stands, or is asked to.</summary>
internal enum Stands
{
    Lift,
    Floor,
}

/// <summary>One car that comes and goes, is moved and is looked over; another car may stand on the lift.</summary>
/// <param name="Taken">Another car stands on the lift.</param>
/// <param name="Loose">A wheel nut is open: the gate says that the car is not to be moved.</param>
/// <param name="Road">A release to the road stands.</param>
/// <param name="Movers">Who moved it, or saw it go, against the gate since somebody looked it over; nobody where that is not so.</param>
/// <param name="To">Where it was asked, or said, to go.</param>
/// <param name="By">Who asked, or said so.</param>
internal readonly record struct VisitedCar(bool Here, Stands At, bool Taken, bool Loose, bool Road, People Movers, Stands To, People By, bool Granted)
{
    public static readonly VisitedCar Start = new() { Here = true, At = Stands.Floor };

    public static readonly (People Who, Stands To)[] Moves =
    [
        (People.Ann, Stands.Lift), (People.Ann, Stands.Floor), (People.Bob, Stands.Lift), (People.Bob, Stands.Floor),
    ];

    public bool ToLookOver => Movers != People.Nobody;

    public VisitedCar ComeIn(Stands to) => !Here && HasRoom(to) ? Answer(to, People.Ann, true) with { Here = true, At = to } : Answer(to, People.Ann, false);

    public VisitedCar Move(Stands to) => CanGo(to) && !Loose ? Answer(to, People.Ann, true) with { At = to } : Answer(to, People.Ann, false);

    public VisitedCar Moved(People by, Stands to) => CanGo(to) ? Answer(to, by, true) with { At = to, Movers = Loose ? Movers | by : Movers } : Answer(to, by, false);

    public VisitedCar LookOver(People by) => ToLookOver && !Movers.Has(by) ? Answer(At, by, true) with { Movers = People.Nobody } : Answer(At, by, false);

    public VisitedCar Drive() => Here && Road ? Away(People.Nobody) : Answer(At, People.Ann, false);

    public VisitedCar Load() => Here && !Loose ? Away(People.Nobody) : Answer(At, People.Ann, false);

    public VisitedCar Driven() => Here ? Away(Road ? People.Nobody : People.Ann) : Answer(At, People.Ann, false);

    public VisitedCar Loaded() => Here ? Away(Loose ? People.Ann : People.Nobody) : Answer(At, People.Ann, false);

    public VisitedCar Open() => Answer(At, People.Nobody, false) with { Loose = true, Road = false };

    public VisitedCar Close() => Answer(At, People.Nobody, false) with { Loose = false };

    public VisitedCar Release() => !Loose && !ToLookOver ? Answer(At, People.Nobody, true) with { Road = true } : Answer(At, People.Nobody, false);

    public VisitedCar OtherCar(bool taken) => Answer(At, People.Nobody, false) with { Taken = taken };

    public bool HasRoom(Stands to) => to != Stands.Lift || !Taken;

    private bool CanGo(Stands to) => Here && to != At && HasRoom(to);

    private VisitedCar Away(People mover) => Answer(At, People.Ann, true) with { Here = false, At = Stands.Floor, Movers = Movers | mover, To = Stands.Floor };

    private VisitedCar Answer(Stands to, People by, bool granted) => this with { To = to, By = by, Granted = granted };
}
