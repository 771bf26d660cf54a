using ShopJobs.Domain.Tests.Specification.Proof;

namespace ShopJobs.Domain.Tests.Specification.Releases;

/// <summary>What could be wrong with releases, each fault with the requirement that has to notice it.</summary>
internal static class ReleaseFaults
{
    public static RuleBook<ReleasedCar> Of(RuleBook<ReleasedCar> book) => book
        .Fault("an opened joint only suspends", "OPENING-ENDS", "Open",
            (before, _) => before.Given == Given.Stands, (_, car) => Standing(car, Given.Suspended))
        .Fault("a pull on top only suspends", "PULL-ENDS", "Pull on top",
            (before, _) => before.Given == Given.Stands, (_, car) => Standing(car, Given.Suspended))
        .Fault("a tool in doubt does not suspend a release", "ANYTHING-ELSE-SUSPENDS", "Raise",
            (before, after) => before.Given == Given.Stands && after.Against == Against.Doubt, (_, car) => Standing(car, Given.Stands))
        .Fault("a HOLD after release leaves the release standing", "ANYTHING-ELSE-SUSPENDS", "Raise",
            (before, after) => before.Given == Given.Stands && after.Against == Against.Hold, (_, car) => Standing(car, Given.Stands))
        .Fault("\"setting changed\" after release leaves the release standing", "ANYTHING-ELSE-SUSPENDS", "Raise",
            (before, after) => before.Given == Given.Stands && after.Against == Against.SettingChanged, (_, car) => Standing(car, Given.Stands))
        .Fault("a fallen witness or sign-off leaves the release standing", "ANYTHING-ELSE-SUSPENDS", "Raise",
            (before, after) => before.Given == Given.Stands && after.Against == Against.SignOffFallen, (_, car) => Standing(car, Given.Stands))
        .Fault("a lifted doubt lets the release stand without the lead", "NEVER-BY-ITSELF", "Lift",
            (before, after) => before.Given == Given.Suspended && after.Could, (_, car) => Standing(car, Given.Stands))
        .Fault("the lead's signature asks nothing again", "ASKED-AGAIN", "Uphold",
            (before, after) => before.Given == Given.Suspended && !after.Granted, (_, car) => Standing(car, Given.Stands) with { Granted = true })
        .Fault("a suspended release never stands again", "STANDS-AGAIN", "Uphold",
            (_, after) => after.Granted, (before, _) => before with { Wish = Wish.Uphold })
        .Fault("a release given by mistake stays", "WITHDRAWN-ALONE", "Withdraw",
            (_, after) => after.Granted, (before, _) => before with { Wish = Wish.Withdraw })
        .Fault("the customer's page goes on saying that it stands", "SAID-EVERYWHERE", "Raise",
            (before, _) => before.Given == Given.Stands, (_, car) => car with { Page = Given.Stands })
        .Fault("an opening that never was ends the release for good", "TAKEN-BACK-SUSPENDS", "Take the opening back, confirmed",
            (_, _) => true, (_, car) => Standing(car, Given.Ended))
        .Fault("a joint closed again brings the ended release back", "ENDED-FOR-GOOD", "Close again",
            (before, _) => before is { Given: Given.Ended, TakenFrom: false }, (_, car) => Standing(car, Given.Suspended))
        .Fault("a release is given over what stands against it", "STANDS-AS-IF-GIVEN-NOW", "Give",
            (before, _) => before.Against == Against.Doubt, (_, car) => Standing(car, Given.Stands));

    private static ReleasedCar Standing(ReleasedCar car, Given given) => car with { Given = given, Page = given };
}
