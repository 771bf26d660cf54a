namespace ShopJobs.Domain.Logbook;

/// <summary>One car; the unit of consistency of the logbook.</summary>
public readonly record struct CarId(Guid Value);

/// <summary>One job: a procedure put on a car.</summary>
public readonly record struct JobId(Guid Value);

/// <summary>One person. Names live outside the logbook.</summary>
public readonly record struct PersonId(Guid Value);

/// <summary>One unbroken stretch of one person at one tablet: a lock and return by the same person is the same.</summary>
public readonly record struct SessionId(Guid Value);

/// <summary>The tablet or scanner a command came from.</summary>
public readonly record struct DeviceId(Guid Value);

/// <summary>Made by the client before the first send and reused on every retry.</summary>
public readonly record struct CommandId(Guid Value);
