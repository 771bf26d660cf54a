using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class JointsByCar : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateTime>(
                name: "CurrentSince",
                table: "Procedures",
                type: "TEXT",
                nullable: false,
                defaultValue: new DateTime(1, 1, 1, 0, 0, 0, 0, DateTimeKind.Unspecified));

            // Until now the newest import of a code was current.
            migrationBuilder.Sql("UPDATE Procedures SET CurrentSince = ImportedAt");

            migrationBuilder.AddColumn<Guid>(
                name: "LookedBy",
                table: "JointRegisters",
                type: "TEXT",
                nullable: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropColumn(
                name: "CurrentSince",
                table: "Procedures");

            migrationBuilder.DropColumn(
                name: "LookedBy",
                table: "JointRegisters");
        }
    }
}
