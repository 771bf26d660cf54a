using ShopJobs.Web.Admin;
using ShopJobs.Web.Running;

return Verbs.AskedFor(args) ? await Verbs.RunAsync(args) : await ShopHost.RunAsync(args);
