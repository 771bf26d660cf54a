using System;
using Microsoft.EntityFrameworkCore.Migrations;

#nullable disable

namespace ShopJobs.Web.Data.Migrations
{
    /// <inheritdoc />
    public partial class PartOptions : Migration
    {
        /// <inheritdoc />
        protected override void Up(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.CreateTable(
                name: "PartChoices",
                columns: table => new
                {
                    Number = table.Column<long>(type: "INTEGER", nullable: false)
                        .Annotation("Sqlite:Autoincrement", true),
                    JobId = table.Column<Guid>(type: "TEXT", nullable: false),
                    GroupId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    OptionId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Option = table.Column<string>(type: "TEXT", maxLength: 81, nullable: false),
                    Reason = table.Column<string>(type: "TEXT", maxLength: 500, nullable: false),
                    Cautions = table.Column<string>(type: "TEXT", nullable: false),
                    Others = table.Column<string>(type: "TEXT", nullable: false),
                    At = table.Column<DateTime>(type: "TEXT", nullable: false),
                    By = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartChoices", x => x.Number);
                    table.ForeignKey(
                        name: "FK_PartChoices_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                    table.ForeignKey(
                        name: "FK_PartChoices_People_By",
                        column: x => x.By,
                        principalTable: "People",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PartOptions",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    JobId = table.Column<Guid>(type: "TEXT", nullable: false),
                    GroupId = table.Column<string>(type: "TEXT", maxLength: 100, nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false, collation: "NOCASE"),
                    Maker = table.Column<string>(type: "TEXT", maxLength: 40, nullable: false, collation: "NOCASE"),
                    Evidence = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    OwnNut = table.Column<bool>(type: "INTEGER", nullable: false),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ChangedBy = table.Column<Guid>(type: "TEXT", nullable: true),
                    Revision = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartOptions", x => x.Id);
                    table.ForeignKey(
                        name: "FK_PartOptions_Jobs_JobId",
                        column: x => x.JobId,
                        principalTable: "Jobs",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "WheelStacks",
                columns: table => new
                {
                    Id = table.Column<Guid>(type: "TEXT", nullable: false),
                    CarId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Name = table.Column<string>(type: "TEXT", maxLength: 30, nullable: false, collation: "NOCASE"),
                    HubFlange = table.Column<decimal>(type: "TEXT", nullable: false),
                    DiscHat = table.Column<decimal>(type: "TEXT", nullable: false),
                    Spacer = table.Column<decimal>(type: "TEXT", nullable: false),
                    WheelPad = table.Column<decimal>(type: "TEXT", nullable: false),
                    Washer = table.Column<decimal>(type: "TEXT", nullable: false),
                    WheelSeat = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    NutSeat = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    NutThread = table.Column<decimal>(type: "TEXT", nullable: false),
                    ClosedNutDepth = table.Column<decimal>(type: "TEXT", nullable: true),
                    NutClass = table.Column<string>(type: "TEXT", maxLength: 20, nullable: true),
                    ChangedAt = table.Column<DateTime>(type: "TEXT", nullable: false),
                    ChangedBy = table.Column<Guid>(type: "TEXT", nullable: true),
                    Revision = table.Column<Guid>(type: "TEXT", nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_WheelStacks", x => x.Id);
                    table.ForeignKey(
                        name: "FK_WheelStacks_Cars_CarId",
                        column: x => x.CarId,
                        principalTable: "Cars",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Restrict);
                });

            migrationBuilder.CreateTable(
                name: "PartOptionValues",
                columns: table => new
                {
                    OptionId = table.Column<Guid>(type: "TEXT", nullable: false),
                    Property = table.Column<string>(type: "TEXT", maxLength: 20, nullable: false),
                    Text = table.Column<string>(type: "TEXT", maxLength: 60, nullable: false),
                    Source = table.Column<string>(type: "TEXT", maxLength: 120, nullable: false)
                },
                constraints: table =>
                {
                    table.PrimaryKey("PK_PartOptionValues", x => new { x.OptionId, x.Property });
                    table.ForeignKey(
                        name: "FK_PartOptionValues_PartOptions_OptionId",
                        column: x => x.OptionId,
                        principalTable: "PartOptions",
                        principalColumn: "Id",
                        onDelete: ReferentialAction.Cascade);
                });

            migrationBuilder.CreateIndex(
                name: "IX_PartChoices_By",
                table: "PartChoices",
                column: "By");

            migrationBuilder.CreateIndex(
                name: "IX_PartChoices_JobId_GroupId",
                table: "PartChoices",
                columns: new[] { "JobId", "GroupId" });

            migrationBuilder.CreateIndex(
                name: "IX_PartOptions_JobId_GroupId_Maker_Name",
                table: "PartOptions",
                columns: new[] { "JobId", "GroupId", "Maker", "Name" },
                unique: true);

            migrationBuilder.CreateIndex(
                name: "IX_WheelStacks_CarId_Name",
                table: "WheelStacks",
                columns: new[] { "CarId", "Name" },
                unique: true);
        }

        /// <inheritdoc />
        protected override void Down(MigrationBuilder migrationBuilder)
        {
            migrationBuilder.DropTable(
                name: "PartChoices");

            migrationBuilder.DropTable(
                name: "PartOptionValues");

            migrationBuilder.DropTable(
                name: "WheelStacks");

            migrationBuilder.DropTable(
                name: "PartOptions");
        }
    }
}
