using ShopJobs.Web.Components.FirstStart;
using ShopJobs.Web.Demo;

namespace ShopJobs.Web.Running;

/// <summary>Registers what each feature folder brings.</summary>
internal static class Features
{
    internal static IServiceCollection AddFeatures(this IServiceCollection services)
    {
        services.AddSingleton<FirstStartDesk>().AddSingleton<DemoShop>();
        return services;
    }
}
