using Microsoft.Data.Sqlite;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Tools;

namespace ShopJobs.Web.Components.TorqueTools;

/// <summary>The tool's ordinary row, written in the transaction of its entry.</summary>
internal static class ToolRows
{
    /// <summary>Adds the row, or gives a known one its new name.</summary>
    public static void Write(SqliteTransaction transaction, ToolId id, string name, bool known, PersonId by, DateTime at)
    {
        using var command = transaction.Connection!.CreateCommand();
        command.Transaction = transaction;
        command.CommandText = known
            ? "UPDATE Tools SET Name = $name, ChangedAt = $at, ChangedBy = $by, Revision = $revision WHERE Id = $id"
            : "INSERT INTO Tools (Id, Name, ChangedAt, ChangedBy, Revision) VALUES ($id, $name, $at, $by, $revision)";
        command.Parameters.AddWithValue("$id", id.Value);
        command.Parameters.AddWithValue("$name", name);
        command.Parameters.AddWithValue("$at", at);
        command.Parameters.AddWithValue("$by", by.Value);
        command.Parameters.AddWithValue("$revision", Guid.NewGuid());
        command.ExecuteNonQuery();
    }
}
