using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class StepRemarks : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "StepRemarks",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    ProcedureDigest = table.Column<string>(type: "TEXT", maxLength: 64, nullable: false),
                    StepId = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    CarId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Fault = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Words = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<Guid>(type: "TEXT", nullable: false),
                    Answer = table.Column<string>(type: "TEXT", maxLength: 500, nullable: true),
                    AnsweredAt = table.Column<DateTime>(type: "TEXT", nullable: true),
                    AnsweredBy = table.Column<Guid>(type: "TEXT", nullable: true)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_StepRemarks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_StepRemarks_Cars_CarId",
                        column: x => x.CarId,
                        principalTable: "Cars",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StepRemarks_People_By",
                        column: x => x.By,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_StepRemarks_Procedures_ProcedureDigest",
                        column: x => x.ProcedureDigest,
                        principalTable: "Procedures",
                        principalColumn: "Digest",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateIndex(
                name: "IX_StepRemarks_AnsweredAt",
                table: "StepRemarks",
                column: "AnsweredAt");

            migrationBuilder.CreateIndex(
                name: "IX_StepRemarks_By",
                table: "StepRemarks",
                column: "By");

            migrationBuilder.CreateIndex(
                name: "IX_StepRemarks_CarId",
                table: "StepRemarks",
                column: "CarId");

            migrationBuilder.CreateIndex(
                name: "IX_StepRemarks_ProcedureDigest",
                table: "StepRemarks",
                column: "ProcedureDigest");
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "StepRemarks");
        }
    }
}
