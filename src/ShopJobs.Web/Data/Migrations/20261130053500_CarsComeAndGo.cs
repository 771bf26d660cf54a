using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class CarsComeAndGo : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            // A car that is in the book already has no visit and counts as here.
            migrationBuilder.AddColumn<bool>(
                name: "CountsAsHere",
                table: "Cars",
                type: "INTEGER",
                nullable: false,
                defaultValue: true);

            migrationBuilder.AddColumn<string>(
                name: "Distance",
                table: "Cars",
                type: "TEXT",
                maxLength: 20,
                nullable: false,
                defaultValue: "Kilometre");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "CountsAsHere",
                table: "Cars");

            migrationBuilder.DropColumn(
                name: "Distance",
                table: "Cars");
        }
    }
}
