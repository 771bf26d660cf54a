using ShopJobs.Web.Components.CarPage;
using ShopJobs.Web.Components.Cars;
using ShopJobs.Web.Components.Catalogue;
using ShopJobs.Web.Components.Clock;
using ShopJobs.Web.Components.CustomerData;
using ShopJobs.Web.Components.Devices;
using ShopJobs.Web.Components.FirstStart;
using ShopJobs.Web.Components.Floor;
using ShopJobs.Web.Components.Instruments;
using ShopJobs.Web.Components.JobCards;
using ShopJobs.Web.Components.JobEnds;
using ShopJobs.Web.Components.LogbookPages;
using ShopJobs.Web.Components.Look.Signing;
using ShopJobs.Web.Components.MyWork;
using ShopJobs.Web.Components.Parts;
using ShopJobs.Web.Components.PartsCatalogue;
using ShopJobs.Web.Components.PeopleAndPlaces;
using ShopJobs.Web.Components.Photos;
using ShopJobs.Web.Components.Procedures;
using ShopJobs.Web.Components.Revisions;
using ShopJobs.Web.Components.Step;
using ShopJobs.Web.Components.Summaries;
using ShopJobs.Web.Components.TorqueTools;
using ShopJobs.Web.Components.Visits;
using ShopJobs.Web.Demo;
using ShopJobs.Web.Desk;

namespace ShopJobs.Web.Running;

/// <summary>Registers what each feature folder brings.</summary>
internal static class Features
{
    internal static IServiceCollection AddFeatures(this IServiceCollection services)
    {
        services.AddSingleton<FirstStartDesk>().AddSingleton<DemoShop>().AddSingleton<DemoTablets>().AddSingleton<DemoWork>();
        services.AddScoped<CustomerDesk>().AddScoped<VisitDesk>();
        services.AddSingleton<JobStates>().AddSingleton<FloorBoard>().AddSingleton<CarRows>();
        services.AddSingleton<ClockShelf>();
        services.AddScoped<CarSigning>().AddScoped<ToolSigning>().AddScoped<ClockSigning>().AddScoped<JobPeople>().AddScoped<NewJob>();
        services.AddScoped<ShopChange>().AddScoped<LeadChange>().AddScoped<PeopleDesk>().AddScoped<PlaceDesk>().AddScoped<TabletShelf>();
        services.AddSingleton<ProcedureShelf>().AddSingleton<ProcedureImport>().AddSingleton<ImportLook>().AddScoped<SecondLook>().AddScoped<ProcedureRetirement>();
        services.AddSingleton<NewerRevisions>().AddScoped<StepRemarks>();
        services.AddScoped<LogbookShelf>().AddScoped<CorrectionDesk>().AddSingleton<LogbookCheck>();
        services.AddSingleton<PartShelf>().AddScoped<PartDesk>().AddScoped<StackDesk>();
        services.AddSingleton<PartCatalogueShelf>().AddScoped<PartCatalogueDesk>().AddScoped<PartImportDesk>();
        services.AddScoped<InstrumentShelf>();
        services.AddScoped<ToolShelf>().AddSingleton<ToolRecall>();
        services.AddSingleton<SummaryShelf>().AddSingleton<LinkShelf>().AddSingleton<LinkAddress>().AddSingleton<CustomerVersions>().AddSingleton<AcknowledgementDesk>();
        services.AddScoped<SummaryDesk>().AddScoped<LinkDesk>();
        services.AddSingleton<CustomerFiles>().AddSingleton<CustomerEraser>();
        services.AddSingleton<PickedTools>().AddSingleton<KeptReadings>().AddSingleton<ReadingDesk>().AddSingleton<ToolKeyDesk>().AddScoped<ToolKeys>();
        services.AddScoped<StepDesk>().AddScoped<MyWorkDesk>().AddScoped<JobCardDesk>();
        services.AddSingleton<PictureQueue>().AddSingleton<PhotoShelf>().AddSingleton<PhotoDesk>();
        services.AddScoped<CatalogueShelf>();
        return services;
    }
}
