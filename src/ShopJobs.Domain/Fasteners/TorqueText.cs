using System.Globalization;

namespace ShopJobs.Domain.Fasteners;

/// <summary>Reads a typed torque; every refusal says what is wrong and what to write instead.</summary>
internal static class TorqueText
{
    private const int MostDigits = 9;
    private const int MostShown = 40;

    public static Advice? Read(string? text, TorqueUnit assumed, out EnteredTorque value)
    {
        value = default;
        var typed = text?.Trim() ?? "";
        if (typed.Length == 0)
        {
            return new Advice("Nothing entered", "enter a torque, for example 110 or 81 lbf·ft");
        }

        var shown = typed.Length > MostShown ? typed[..MostShown] + "..." : typed;
        if ("-−–+".Contains(typed[0]))
        {
            return new Advice($"\"{shown}\" has a sign", "a torque is entered without one");
        }

        var length = typed.TakeWhile(c => char.IsAsciiDigit(c) || c is '.' or ',').Count();
        var number = typed[..length];
        var unitText = typed[length..].Trim();
        if (length == 0)
        {
            return new Advice($"\"{shown}\" does not start with a number", "enter the torque as digits, for example 110");
        }

        if (ProblemOf(number, unitText, shown) is { } problem)
        {
            return problem;
        }

        var unit = assumed;
        if (unitText.Length > 0 && !TorqueUnits.TryParse(unitText, out unit))
        {
            return new Advice($"\"{shown}\" has no unit known here", "use N·m, lbf·ft, lbf·in or kgf·m");
        }

        value = new EnteredTorque(
            decimal.Parse(number.Replace(',', '.'), NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture), unit);
        return null;
    }

    private static Advice? ProblemOf(string number, string unitText, string shown)
    {
        var digits = number.Count(char.IsAsciiDigit);
        var marks = number.Length - digits;
        if (number.Contains(',') && number.Contains('.'))
        {
            return new Advice($"\"{shown}\" has a comma and a point", "write one decimal mark only and no thousands mark, for example 1100.5");
        }

        if (marks > 1)
        {
            return new Advice($"\"{shown}\" has more than one decimal mark", "write one only, for example 1100.5");
        }

        if (!char.IsAsciiDigit(number[0]) || !char.IsAsciiDigit(number[^1]))
        {
            return new Advice($"\"{shown}\" needs digits before and after the decimal mark", "write them out, for example 0.5");
        }

        if (digits > MostDigits)
        {
            return new Advice($"\"{shown}\" has more than {MostDigits} digits", "enter the torque again");
        }

        if (unitText.Length > 0 && char.IsAsciiDigit(unitText[0]))
        {
            return new Advice($"\"{shown}\" has a space inside the number", "write the digits together");
        }

        return unitText.Length > 1 && unitText[0] is 'e' or 'E' && unitText.Skip(1).All(c => char.IsAsciiDigit(c) || c is '+' or '-')
            ? new Advice($"\"{shown}\" is written with an exponent", "write the number out")
            : null;
    }
}
