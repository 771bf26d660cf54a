using Microsoft.EntityFrameworkCore;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using ShopJobs.Domain.Logbook;
using ShopJobs.Domain.Parts;

namespace ShopJobs.Web.Data;

/// <summary>Every id kind is stored as its Guid; every instant is stored and read back as UTC.</summary>
internal static class IdConverters
{
    internal static void StoreIdsAndInstants(this ModelConfigurationBuilder configuration)
    {
        configuration.Properties<CarId>().HaveConversion<OfCar>();
        configuration.Properties<JobId>().HaveConversion<OfJob>();
        configuration.Properties<PersonId>().HaveConversion<OfPerson>();
        configuration.Properties<DeviceId>().HaveConversion<OfDevice>();
        configuration.Properties<PartOptionId>().HaveConversion<OfPartOption>();
        configuration.Properties<CustomerId>().HaveConversion<OfCustomer>();
        configuration.Properties<SessionId>().HaveConversion<OfSession>();
        configuration.Properties<PartId>().HaveConversion<OfPart>();
        configuration.Properties<DateTime>().HaveConversion<Utc>();
    }

    private sealed class OfCar() : ValueConverter<CarId, Guid>(id => id.Value, value => new CarId(value));

    private sealed class OfJob() : ValueConverter<JobId, Guid>(id => id.Value, value => new JobId(value));

    private sealed class OfPerson() : ValueConverter<PersonId, Guid>(id => id.Value, value => new PersonId(value));

    private sealed class OfDevice() : ValueConverter<DeviceId, Guid>(id => id.Value, value => new DeviceId(value));

    private sealed class OfPartOption() : ValueConverter<PartOptionId, Guid>(id => id.Value, value => new PartOptionId(value));

    private sealed class OfCustomer() : ValueConverter<CustomerId, Guid>(id => id.Value, value => new CustomerId(value));

    private sealed class OfSession() : ValueConverter<SessionId, Guid>(id => id.Value, value => new SessionId(value));

    private sealed class OfPart() : ValueConverter<PartId, Guid>(id => id.Value, value => new PartId(value));

    private sealed class Utc() : ValueConverter<DateTime, DateTime>(
        instant => instant.ToUniversalTime(),
        stored => DateTime.SpecifyKind(stored, DateTimeKind.Utc));
}
