using FluentValidation;
using FluentValidation.Results;

namespace ShopJobs.Domain.Fasteners;

/// <summary>What is wrong or worth knowing, and what to do about it.</summary>
/// <param name="What">Begins as it should stand, without a full stop: "Target: none chosen in 60 to 95 N·m".</param>
/// <param name="Next">Begins small, without a full stop: "choose one, with its reason".</param>
public sealed record Advice(string What, string Next)
{
    /// <summary>In one line, as beside a field: "what: next."</summary>
    public string OneLine => $"{What}: {Next}.";

    /// <summary>As two sentences: "What. Next."</summary>
    public override string ToString() => $"{What}. {Capital(Next)}.";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}

/// <summary>Carries advice through a validator, so that nobody has to cut its message in two.</summary>
internal static class Advising
{
    /// <summary>The advice of a failure made here.</summary>
    public static Advice Advice(this ValidationFailure found) => (Advice)found.CustomState;

    /// <summary>Fails with this advice.</summary>
    public static IRuleBuilderOptions<T, TProperty> WithAdvice<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, Func<T, Advice> advice) =>
        rule.WithState(advice).WithMessage(broken => advice(broken).ToString());

    /// <summary>The same advice, whatever was entered.</summary>
    public static IRuleBuilderOptions<T, TProperty> WithAdvice<T, TProperty>(this IRuleBuilderOptions<T, TProperty> rule, string what, string next) =>
        rule.WithAdvice(_ => new Advice(what, next));
}
