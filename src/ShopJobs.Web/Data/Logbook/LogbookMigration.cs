using Microsoft.EntityFrameworkCore.Infrastructure;
using Microsoft.EntityFrameworkCore.Migrations;

namespace ShopJobs.Web.Data.Logbook;

/// <summary>
/// Makes the logbook tables. They are in no EF model, so no later migration can rebuild one of them and lose its triggers.
/// </summary>
[DbContext(typeof(ShopDbContext))]
[Migration("20261125000100_Logbook")]
public sealed class LogbookMigration : Migration
{
    internal const string ScriptName = "0001_logbook";

    protected override void Up(MigrationBuilder migrationBuilder) => migrationBuilder.Sql(LogbookSchema.Script(ScriptName));

    protected override void Down(MigrationBuilder migrationBuilder) =>
        throw new NotSupportedException("The logbook is never taken down.");
}
