using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <summary>The place on the floor is called a floor space, where nobody has given it a name of their own.</summary>
    public partial class FloorSpace : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder) => Rename(migrationBuilder, "Floor place", "Floor space");

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder) => Rename(migrationBuilder, "Floor space", "Floor place");

        private static void Rename(MigrationBuilder migrationBuilder, string from, string to) =>
            migrationBuilder.Sql($"UPDATE \"Places\" SET \"Name\" = '{to}' WHERE \"Key\" = 'Floor' AND \"Name\" = '{from}' AND NOT EXISTS (SELECT 1 FROM \"Places\" WHERE \"Name\" = '{to}')");
    }
}
