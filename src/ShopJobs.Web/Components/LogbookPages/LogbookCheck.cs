using ShopJobs.Domain.Logbook;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Logbook.Verify;

namespace ShopJobs.Web.Components.LogbookPages;

/// <summary>Verifies one logbook off the page's thread.</summary>
public sealed class LogbookCheck(DataFolder folder)
{
    /// <summary>Reads every entry of the logbook and compares chain, columns and head.</summary>
    /// <param name="reached">Told now and then how many entries were read.</param>
    public Task<VerifyReport> RunAsync(LogbookId logbook, IProgress<long> reached) =>
        Task.Run(() => new LogbookVerifier(folder.Database, EntryCodec.KeysOf).Verify(logbook, reached));
}
