namespace ShopJobs.Web.Components.Photos;

/// <summary>
/// Pictures are decoded one at a time, so that many at once do not exhaust the memory. A file that is being sent in takes one of ten
/// places, from its first byte until it is recorded; with none left it is not read at all.
/// </summary>
public sealed class PictureQueue : IDisposable
{
    /// <summary>Files that may be read or wait at one time.</summary>
    public const int Places = 10;

    private readonly SemaphoreSlim turn = new(1, 1);
    private int taken;

    /// <summary>A place, to be given back; null where none is left.</summary>
    public IDisposable? TakePlace()
    {
        if (Interlocked.Increment(ref taken) <= Places)
        {
            return new Place(this);
        }

        Interlocked.Decrement(ref taken);
        return null;
    }

    /// <summary>Runs the work when it is its turn, away from the caller's thread.</summary>
    public async Task<T> InTurnAsync<T>(Func<T> work, CancellationToken cancellation = default)
    {
        await turn.WaitAsync(cancellation);
        try
        {
            return await Task.Run(work, CancellationToken.None);
        }
        finally
        {
            turn.Release();
        }
    }

    public void Dispose() => turn.Dispose();

    private sealed class Place(PictureQueue queue) : IDisposable
    {
        private int left;

        public void Dispose()
        {
            if (Interlocked.Exchange(ref left, 1) == 0)
            {
                Interlocked.Decrement(ref queue.taken);
            }
        }
    }
}
