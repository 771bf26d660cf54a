using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class NamesAndRetired : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateTime>(
                name: "RetiredAt",
                table: "Procedures",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<Guid>(
                name: "RetiredBy",
                table: "Procedures",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateTime>(
                name: "RetiredAt",
                table: "Customers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<DateTime>(
                name: "RetiredAt",
                table: "Cars",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "NamesBefore",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    PersonId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Until = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ChangedBy = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_NamesBefore", x => x.Id);
                    table.ForeignKey(
                        name: "FK_NamesBefore_People_PersonId",
                        column: x => x.PersonId,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_NamesBefore_PersonId_Until",
                table: "NamesBefore",
                columns: new[] { "PersonId", "Until" });
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "NamesBefore");

            migrationBuilder.DropColumn(
                name: "RetiredAt",
                table: "Procedures");

            migrationBuilder.DropColumn(
                name: "RetiredBy",
                table: "Procedures");

            migrationBuilder.DropColumn(
                name: "RetiredAt",
                table: "Customers");

            migrationBuilder.DropColumn(
                name: "RetiredAt",
                table: "Cars");
        }
    }
}
