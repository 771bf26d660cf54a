namespace ShopJobs.Web.Data.Logbook;

/// <summary>What a command is answered. It is kept under the command's id, and read back only where the same command comes again.</summary>
public interface ICommandAnswer
{
    /// <summary>As it is kept.</summary>
    ReadOnlyMemory<byte> ToBytes();
}
