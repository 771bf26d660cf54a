using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class PlacesOfTheShop : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "Places",
                columns: table => new
                {
                    Key = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false, collation: "NOCASE"),
                    Kind = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Rank = table.Column<int>(type: "INTEGER", nullable: false),
                    RetiredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ChangedBy = table.Column<Guid>(type: "TEXT", nullable: true),
                    Revision = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Places", x => x.Key);
                });

            migrationBuilder.CreateIndex(
                name: "IX_Places_Name",
                table: "Places",
                column: "Name",
                unique: true);

            // The places that every shop had until now: cars and entries hold these keys. From here on the rows are the shop's own.
            var now = new DateTime(2026, 11, 30, 0, 0, 0, DateTimeKind.Utc);
            migrationBuilder.InsertData(
                table: "Places",
                columns: ["Key", "Name", "Kind", "Rank", "ChangedAt", "Revision"],
                values: new object[,]
                {
                    { "LiftA", "Lift A", "Lift", 1, now, new Guid("5c4b0b0e-2f5e-4d0e-9a57-1d0c7a6f0001") },
                    { "LiftB", "Lift B", "Lift", 2, now, new Guid("5c4b0b0e-2f5e-4d0e-9a57-1d0c7a6f0002") },
                    { "Floor", "Floor place", "Floor", 3, now, new Guid("5c4b0b0e-2f5e-4d0e-9a57-1d0c7a6f0003") },
                    { "Outside", "Outside", "Outside", 4, now, new Guid("5c4b0b0e-2f5e-4d0e-9a57-1d0c7a6f0004") },
                });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "Places");
        }
    }
}
