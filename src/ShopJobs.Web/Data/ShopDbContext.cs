using Microsoft.EntityFrameworkCore;
using ShopJobs.Web.Data.Cars;
using ShopJobs.Web.Data.Jobs;
using ShopJobs.Web.Data.Parts;
using ShopJobs.Web.Data.People;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Data.Shop;
using ShopJobs.Web.Data.Summaries;
using ShopJobs.Web.Data.Tools;

namespace ShopJobs.Web.Data;

/// <summary>The shop's ordinary rows. The entry table is not mapped here: see <c>Data/Logbook</c>.</summary>
public sealed class ShopDbContext(DbContextOptions<ShopDbContext> options) : DbContext(options)
{
    public DbSet<Person> People => Set<Person>();

    public DbSet<NameBefore> NamesBefore => Set<NameBefore>();

    public DbSet<PersonRight> Rights => Set<PersonRight>();

    public DbSet<Tablet> Tablets => Set<Tablet>();

    public DbSet<PersonSession> Sessions => Set<PersonSession>();

    public DbSet<DoorNote> DoorNotes => Set<DoorNote>();

    public DbSet<Customer> Customers => Set<Customer>();

    public DbSet<OwnerBefore> OwnersBefore => Set<OwnerBefore>();

    public DbSet<Car> Cars => Set<Car>();

    public DbSet<PlaceRow> Places => Set<PlaceRow>();

    public DbSet<ToolRow> Tools => Set<ToolRow>();

    public DbSet<ToolKeyRow> ToolKeys => Set<ToolKeyRow>();

    public DbSet<ProcedureRevision> Procedures => Set<ProcedureRevision>();

    public DbSet<StepRemark> StepRemarks => Set<StepRemark>();

    public DbSet<JointRegisterRevision> JointRegisters => Set<JointRegisterRevision>();

    public DbSet<Job> Jobs => Set<Job>();

    public DbSet<Assignment> Assignments => Set<Assignment>();

    public DbSet<OptionRow> PartOptions => Set<OptionRow>();

    public DbSet<PartChoice> PartChoices => Set<PartChoice>();

    public DbSet<WheelStackRow> WheelStacks => Set<WheelStackRow>();

    public DbSet<PartRow> Parts => Set<PartRow>();

    public DbSet<PartImportDraft> PartImportDrafts => Set<PartImportDraft>();

    public DbSet<CustomerLink> CustomerLinks => Set<CustomerLink>();

    public DbSet<SummaryAcknowledgement> Acknowledgements => Set<SummaryAcknowledgement>();

    public DbSet<ShopSetting> Settings => Set<ShopSetting>();

    protected override void ConfigureConventions(ModelConfigurationBuilder configurationBuilder) =>
        configurationBuilder.StoreIdsAndInstants();

    protected override void OnModelCreating(ModelBuilder modelBuilder) =>
        modelBuilder.ApplyConfigurationsFromAssembly(typeof(ShopDbContext).Assembly);
}
