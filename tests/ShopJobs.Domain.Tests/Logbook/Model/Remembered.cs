namespace ShopJobs.Domain.Tests.Logbook.Model;

/// <summary>Answers of one ledger to one question. No later line changes a ledger, so each is scanned for once.</summary>
internal sealed class Remembered<TKey, TAnswer>
    where TKey : notnull
{
    private readonly Dictionary<TKey, TAnswer> answers = [];

    public TAnswer Of(TKey key, Func<TKey, TAnswer> scan)
    {
        if (!answers.TryGetValue(key, out var answer))
        {
            answers[key] = answer = scan(key);
        }

        return answer;
    }
}
