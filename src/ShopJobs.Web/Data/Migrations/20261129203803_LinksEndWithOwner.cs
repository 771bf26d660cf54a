using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class LinksEndWithOwner : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<bool>(
                name: "ChangedHands",
                table: "CustomerLinks",
                type: "INTEGER",
                nullable: false,
                defaultValue: false);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "ChangedHands",
                table: "CustomerLinks");
        }
    }
}
