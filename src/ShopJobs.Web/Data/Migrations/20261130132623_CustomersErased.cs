using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class CustomersErased : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.AddColumn<DateTime>(
                name: "ErasedAt",
                table: "Customers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.AddColumn<Guid>(
                name: "ErasedBy",
                table: "Customers",
                type: "TEXT",
                nullable: true);

            migrationBuilder.CreateTable(
                name: "OwnersBefore",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CarId = table.Column<Guid>(type: "TEXT", nullable: false),
                    CustomerId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Until = table.Column<DateTime>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_OwnersBefore", x => x.Id);
                    table.ForeignKey(
                        name: "FK_OwnersBefore_Cars_CarId",
                        column: x => x.CarId,
                        principalTable: "Cars",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_OwnersBefore_Customers_CustomerId",
                        column: x => x.CustomerId,
                        principalTable: "Customers",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_OwnersBefore_CarId_Until",
                table: "OwnersBefore",
                columns: new[] { "CarId", "Until" });

            migrationBuilder.CreateIndex(
                name: "IX_OwnersBefore_CustomerId",
                table: "OwnersBefore",
                column: "CustomerId");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "OwnersBefore");

            migrationBuilder.DropColumn(
                name: "ErasedAt",
                table: "Customers");

            migrationBuilder.DropColumn(
                name: "ErasedBy",
                table: "Customers");
        }
    }
}
