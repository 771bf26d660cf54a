using ShopJobs.Domain.Procedures;

namespace ShopJobs.Domain.Tests.Procedures;

/// <summary>What a procedure says to the customer: optional, short, and without a figure to pull by.</summary>
public class CustomerTextDocumentTests
{
    private const string Before = "demo-data: true";

    public static TheoryData<string> Files => [.. Seed.Files];

    [Fact]
    public void A_document_without_it_reads_as_before() => Assert.Null(Written.Load(Written.Sound).Value!.Customer);

    [Fact]
    public void Title_and_sentences_are_read()
    {
        var loaded = With("{title: Studs fitted, says: [The threads were cleaned., Each stud was driven to its shoulder.]}");

        Assert.Empty(loaded.Errors.Select(problem => problem.ToString()));
        Assert.Equal("Studs fitted", loaded.Value!.Customer!.Title);
        Assert.Equal(["The threads were cleaned.", "Each stud was driven to its shoulder."], loaded.Value.Customer.Says);
    }

    [Theory]
    [InlineData("{title: Studs fitted}", "“says” is missing", "add “says:”")]
    [InlineData("{says: [Done.]}", "“title” is missing", "add “title:”")]
    [InlineData("{title: Studs fitted, says: []}", "There are 0 sentences", "one to 3")]
    [InlineData("{title: Studs fitted, says: [A., B., C., D.]}", "There are 4 sentences", "one to 3")]
    [InlineData("{title: Studs fitted, says: [Threads cleaned]}", "is no whole sentence", "full stop")]
    [InlineData("{title: Studs fitted, says: [Pulled to 110 N·m.]}", "names a torque", "leave the figure out")]
    [InlineData("{title: Studs fitted, says: [Pulled to 81 lbf·ft.]}", "names a torque", "leave the figure out")]
    [InlineData("{title: Studs at 110 Nm, says: [Done.]}", "names a torque", "leave the figure out")]
    [InlineData("{title: Studs fitted, says: [They cannot fail.]}", "“cannot fail” promises", "say what was done")]
    [InlineData("{titel: Studs fitted, says: [Done.]}", "The key “titel” is not known here", "did you mean “title”")]
    [InlineData("Studs fitted", "A text is here, keys are needed", "title, says")]
    public void A_fault_is_named_on_its_line(string customer, string what, string next)
    {
        var loaded = With(customer);

        Assert.Null(loaded.Value);
        var found = Assert.Single(loaded.Errors, problem => problem.What.Contains(what, StringComparison.Ordinal));
        Assert.Contains(next, found.Next, StringComparison.Ordinal);
        Assert.Equal(Written.LineOf(Before) + 1, found.Line);
    }

    [Theory]
    [MemberData(nameof(Files))]
    public void Every_demo_procedure_has_words_for_the_customer(string file)
    {
        var said = Seed.Procedure(file).Value!.Customer;

        Assert.NotNull(said);
        Assert.InRange(said.Says.Count, 1, 3);
    }

    private static Domain.Procedures.Documents.LoadedDocument<Procedure> With(string customer) => Written.With(Before, $"{Before}\ncustomer: {customer}");
}
