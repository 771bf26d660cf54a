namespace ShopJobs.Domain.Logbook;

/// <summary>What a joint shows, in the order worst first: a joint shows its worst position.</summary>
public enum PositionState
{
    /// <summary>A person with the right must decide before anything goes on.</summary>
    Held,

    /// <summary>Tightened with a tool that is in doubt.</summary>
    Doubted,

    /// <summary>Taken apart and not fitted since.</summary>
    Open,

    /// <summary>New hardware is on the position, not yet run down by hand.</summary>
    NotFitted,

    /// <summary>Run down by hand.</summary>
    HandTight,

    /// <summary>Some stages done, not the final one.</summary>
    Staged,

    /// <summary>As the car arrived: not checked by us.</summary>
    AsFound,

    /// <summary>At torque, and its re-torque is due.</summary>
    Due,

    /// <summary>The final stage counts.</summary>
    AtTorque,

    /// <summary>At torque and witnessed by a second person.</summary>
    Checked,

    /// <summary>Re-torqued after the first drive.</summary>
    Settled,
}
