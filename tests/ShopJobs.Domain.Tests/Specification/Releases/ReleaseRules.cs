using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Releases;

/// <summary>How a release ends, is suspended, withdrawn, and stands again.</summary>
internal static class ReleaseRules
{
    public static RuleBook<ReleasedCar> Book() => ReleaseFaults.Of(Courses(TakingBack(
        Requirements(Actions(new RuleBook<ReleasedCar>("Releases", default, car => car.ToString()))))));

    private static RuleBook<ReleasedCar> Actions(RuleBook<ReleasedCar> book) => book
        .Action("Give", car => car.Given is not (Given.Stands or Given.Suspended), car => car.Ask(Wish.Give))
        .Action("Uphold", car => car.Given is not (Given.None or Given.Stands), car => car.Ask(Wish.Uphold))
        .Action("Withdraw", car => car.Given is not Given.None, car => car.Ask(Wish.Withdraw))
        .Action("Open", car => car is { Open: false, Against: Against.Nothing }, car => car.Opened())
        .Action("Close again", car => car.Open, car => car.Closed())
        .Action("Pull on top", car => !car.Open && !car.Against.HasFlag(Against.Hold), car => car.Pulled())
        .Action("Raise", ReleasedCar.Causes, (car, cause) => !car.Open && !car.Against.HasFlag(cause), (car, cause) => car.Raise(cause))
        .Action("Lift", ReleasedCar.Causes, (car, cause) => car.CanLift(cause), (car, cause) => car.Lift(cause));

    private static RuleBook<ReleasedCar> TakingBack(RuleBook<ReleasedCar> book) => book
        .Action("Take the opening back, confirmed", car => car is { Open: true, TakenFrom: true }, car => car.TakenBack())
        .On("Take the opening back, confirmed", "12", "TAKEN-BACK-SUSPENDS",
            "An opening taken back as never done, confirmed by a second person, makes ended into suspended",
            (before, _) => before.Given == Given.Ended, (_, after) => after.Given == Given.Suspended);

    private static bool Lives(ReleasedCar car) => car.Given is Given.Stands or Given.Suspended;

    private static RuleBook<ReleasedCar> Requirements(RuleBook<ReleasedCar> book) => book
        .On("Open", "12", "OPENING-ENDS", "Opening, or a pull other than a re-torque, ends a release for good",
            (before, _) => Lives(before), (_, after) => after.Given == Given.Ended)
        .On("Pull on top", "12", "PULL-ENDS", "Opening, or a pull other than a re-torque, ends a release for good",
            (before, _) => Lives(before), (_, after) => after.Given == Given.Ended)
        .On("Raise", "12", "ANYTHING-ELSE-SUSPENDS",
            "Anything else by which it could not be given now (doubt, hold, late report, setting changed, fallen witness or sign-off) suspends it",
            (before, _) => before.Given == Given.Stands, (_, after) => after.Given == Given.Suspended)
        .On("Lift", "12", "NEVER-BY-ITSELF", "it stands again by the lead's signature",
            (before, _) => before.Given == Given.Suspended, (_, after) => after.Given == Given.Suspended)
        .On("Uphold", "12", "ASKED-AGAIN", "it stands again by the lead's signature with all its rules asked again",
            (_, after) => after.Granted, (before, _) => before is { Could: true, Given: Given.Suspended })
        .On("Uphold", "12", "STANDS-AGAIN", "it stands again by the lead's signature",
            (before, _) => before is { Could: true, Given: Given.Suspended }, (_, after) => after.Given == Given.Stands)
        .On("Withdraw", "12", "WITHDRAWN-ALONE", "Anybody with the release right withdraws one alone; the customer's link stays and says so",
            (before, _) => Lives(before), (_, after) => after is { Given: Given.Withdrawn, Page: Given.Withdrawn })
        .Whenever("12", "ENDED-FOR-GOOD", "ends a release for good",
            (before, after) => before.Given is Given.Ended or Given.Withdrawn && after.Given != before.Given,
            (before, after) => after.Wish == Wish.Give || after.Given == Given.Withdrawn || (before.TakenFrom && after.Given == Given.Suspended))
        .Always("12", "SAID-EVERYWHERE", "suspends it, on every screen and page, with why", car => car.Page == car.Given)
        .Always("12", "STANDS-AS-IF-GIVEN-NOW", "Anything else by which it could not be given now suspends it", car => car.Given != Given.Stands || car.Could);

    private static RuleBook<ReleasedCar> Courses(RuleBook<ReleasedCar> book) => book
        .Ends("12", "DOUBT-LIFTED", "A doubt after release lifted by as-found readings: the lead lets it stand again",
            car => car is { Given: Given.Stands, Wish: Wish.Uphold })
        .Ends("12", "BY-MISTAKE", "A release given by mistake while the customer has the link",
            car => car is { Given: Given.Withdrawn, Page: Given.Withdrawn })
        .Ends("12", "WRONG-CORNER", "OPEN on the wrong corner is taken back and the release does not have to be given again",
            car => car is { Given: Given.Suspended, Could: true });
}
