namespace ShopJobs.Domain.Procedures;

/// <summary>One revision of the shop's procedure: a maker's instruction turned into steps somebody else can follow.</summary>
/// <param name="Code">Short code, such as P5.</param>
/// <param name="Title">What is done.</param>
/// <param name="Revision">Revision of our document.</param>
/// <param name="DemoData">True when the figures are invented: shown on every screen and print.</param>
/// <param name="Cautions">Cautions of the whole procedure.</param>
/// <param name="Groups">Joint groups by order of the document.</param>
/// <param name="Steps">Steps by order of the document.</param>
public sealed record Procedure(
    string Code,
    string Title,
    string Revision,
    bool DemoData,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<JointGroup> Groups,
    IReadOnlyList<Step> Steps)
{
    /// <summary>Kinds of car it is for, by their keys in the register; empty where it is for every car whose positions are its visits.</summary>
    public IReadOnlyList<string> Fits { get; init; } = [];

    /// <summary>What is said of the finished job to the customer; null where the document says nothing, and its title stands instead.</summary>
    public CustomerText? Customer { get; init; }

    /// <summary>True where it may go on a car that follows this.</summary>
    public bool IsFor(string follows) => Fits.Count == 0 || Fits.Contains(follows);

    /// <summary>The group with this id. Throws when there is none: a loaded procedure names only its own groups.</summary>
    public JointGroup Group(string id) => Groups.First(group => group.Id == id);
}
