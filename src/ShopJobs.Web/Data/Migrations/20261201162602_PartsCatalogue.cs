using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class PartsCatalogue : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "PartImportDrafts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    By = table.Column<Guid>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Bytes = table.Column<byte[]>(type: "BLOB", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartImportDrafts", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PartImportDrafts_People_By",
                        column: x => x.By,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "Parts",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    Number = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Maker = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false),
                    Key = table.Column<string>(type: "TEXT", maxLength: 160, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 80, nullable: false),
                    Fills = table.Column<string>(type: "TEXT", maxLength: 100, nullable: true),
                    Thread = table.Column<string>(type: "TEXT", maxLength: 40, nullable: true),
                    Strength = table.Column<string>(type: "TEXT", maxLength: 20, nullable: true),
                    SingleUse = table.Column<bool>(type: "INTEGER", nullable: false),
                    Price = table.Column<decimal>(type: "TEXT", nullable: true),
                    Currency = table.Column<string>(type: "TEXT", maxLength: 3, nullable: true),
                    RetiredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ChangedBy = table.Column<Guid>(type: "TEXT", nullable: true),
                    Revision = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_Parts", x => x.Id);
                });

            migrationBuilder.CreateIndex(
                name: "IX_PartImportDrafts_By",
                table: "PartImportDrafts",
                column: "By",
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_Parts_Key",
                table: "Parts",
                column: "Key",
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "PartImportDrafts");

            migrationBuilder.DropTable(
                name: "Parts");
        }
    }
}
