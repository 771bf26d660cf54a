using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Corrections;

/// <summary>The figure of a pull as the book has it. Two of them lie inside the permitted range.</summary>
internal enum Figure
{
    None,
    Short,
    Inside,
    AlsoInside,
    Over,
}

/// <summary>Who restates the figure, and to what.</summary>
internal readonly record struct Restatement(People By, Figure To)
{
    public static readonly Figure[] Figures = [Figure.Short, Figure.Inside, Figure.AlsoInside, Figure.Over];

    public static readonly Restatement[] All = [.. from person in Persons.Each from figure in Figures select new Restatement(person, figure)];

    public override string ToString() => $"{By}, {To}";
}

/// <summary>One final pull by Ann, corrected at most twice.</summary>
/// <param name="Counts">What the book says of it, its witness apart.</param>
/// <param name="Raised">Whose report raised the hold that stands.</param>
/// <param name="Used">The lead used it as it is.</param>
/// <param name="Corrector">Who made the correction that waits to be confirmed.</param>
/// <param name="Correctors">Everybody who corrected it.</param>
/// <param name="Former">Whose witness was voided by a correction.</param>
/// <param name="Hands">The fact: who corrected, confirmed or decided since it last counted, with whoever ended that.</param>
/// <param name="By">Who did the last thing.</param>
/// <param name="Granted">He asked and was let.</param>
internal readonly record struct CorrectedPull(
    Figure Now, bool Counts, People Raised, bool Used, People Corrector, People Correctors, People Witness, People Former,
    int Corrections, People Hands, People By, bool Granted)
{
    public bool Held => Raised != People.Nobody;

    public bool Inside => Now is Figure.Inside or Figure.AlsoInside;

    /// <summary>The second person is neither the doer nor anybody who corrected the pull.</summary>
    public bool IsSecond(People person) => person is not (People.Nobody or People.Ann) && !Correctors.Has(person);

    public static CorrectedPull Pulled(Figure figure) => new()
    {
        Now = figure,
        By = People.Ann,
        Raised = figure == Figure.Over ? People.Ann : People.Nobody,
        Counts = figure is Figure.Inside or Figure.AlsoInside,
    };

    public CorrectedPull Restate(Restatement to)
    {
        var raised = Held ? Raised : to.To == Figure.Over ? to.By : People.Nobody;
        var stands = to.To is Figure.Inside or Figure.AlsoInside;
        return this with
        {
            Now = to.To,
            Counts = stands && Counts && raised == People.Nobody,
            Raised = raised,
            Corrector = to.By,
            Correctors = Correctors | to.By,
            Former = Witness == People.Nobody ? Former : Witness,
            Witness = People.Nobody,
            Corrections = Corrections + 1,
            Hands = Counts ? to.By : Hands | to.By,
            By = to.By,
            Granted = false,
        };
    }

    public CorrectedPull Confirm(People person)
    {
        if (!IsSecond(person))
        {
            return this with { By = person, Granted = false };
        }

        var raised = Corrector == People.Ann && Now != Figure.Over ? People.Nobody : Raised;
        return this with
        {
            Raised = raised,
            Counts = Inside && raised == People.Nobody,
            Witness = person == Former ? Former : Witness,
            Corrector = People.Nobody,
            Hands = Counts ? People.Nobody : Hands | person,
            By = person,
            Granted = true,
        };
    }

    public CorrectedPull UseAsIs(People person) => IsSecond(person)
        ? this with { Raised = People.Nobody, Counts = true, Used = true, Hands = Hands | person, By = person, Granted = true }
        : this with { By = person, Granted = false };

    public CorrectedPull Look(People person) => this with { Witness = person, By = person, Granted = false };
}
