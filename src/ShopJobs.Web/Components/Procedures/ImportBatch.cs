using Microsoft.EntityFrameworkCore;
using ShopJobs.Domain.Procedures;
using ShopJobs.Domain.Procedures.Documents;
using ShopJobs.Web.Data;
using ShopJobs.Web.Data.Procedures;
using ShopJobs.Web.Names;

namespace ShopJobs.Web.Components.Procedures;

/// <summary>A batch read and checked against what the shop has; stores nothing.</summary>
internal sealed class ImportBatch
{
    private static readonly JointRegister NoRegister = new(
        "", false, new Dictionary<string, JointKind>(), new Dictionary<string, IReadOnlyList<string>>(), new Dictionary<string, IReadOnlyList<Undone>>());

    private readonly List<ReadDocument> documents = [];
    private readonly HashSet<string> here;
    private readonly HashSet<string> currentOnes;
    private readonly string? current;

    private ImportBatch(IReadOnlyList<ProcedureRevision> rows, IReadOnlyList<JointRegisterRevision> registers)
    {
        Rows = rows;
        current = registers.SingleOrDefault(row => row.Current)?.Digest;
        here = [.. rows.Select(row => row.Digest), .. registers.Select(row => row.Digest)];
        currentOnes = [.. rows.GroupBy(row => row.Code).Select(code => code.MaxBy(row => row.CurrentSince)!.Digest), .. current is null ? [] : new[] { current }];
    }

    /// <summary>One document as far as it was read.</summary>
    internal sealed record ReadDocument(
        DocumentFile File, LoadedDocument<JointRegister>? Register, LoadedDocument<Procedure>? Procedure, List<DocumentProblem> Problems)
    {
        public string Digest { get; } = DocumentDigest.Of(File.Bytes);

        public bool HasErrors => Problems.Exists(problem => !problem.IsCaution);
    }

    /// <summary>Every procedure revision the shop has.</summary>
    public IReadOnlyList<ProcedureRevision> Rows { get; }

    /// <summary>The register in force; null while the shop has none.</summary>
    public JointRegister? InForce { get; private set; }

    public bool IsSound => !documents.Exists(document => document.HasErrors);

    /// <summary>The register that is not in force yet: new to the shop, or an older one that comes in force again.</summary>
    public ReadDocument? NewRegister => documents.Find(document => document.Register is not null && !currentOnes.Contains(document.Digest));

    /// <summary>Procedures that are not current yet: new to the shop, or an older revision that becomes current again.</summary>
    public IEnumerable<ReadDocument> NewProcedures => documents.Where(document => document.Procedure is not null && !currentOnes.Contains(document.Digest));

    /// <summary>The new register has fewer joints than the one in force, for any kind of car, and the shop has cars.</summary>
    public bool TakesAway { get; private set; }

    /// <summary>True where the shop had this very document before.</summary>
    public bool WasHere(ReadDocument document) => here.Contains(document.Digest);

    public static async Task<ImportBatch> ReadAsync(ShopDbContext shop, IReadOnlyList<DocumentFile> files, CancellationToken cancellation)
    {
        var rows = await shop.Procedures.AsNoTracking().ToListAsync(cancellation);
        var registers = await shop.JointRegisters.AsNoTracking().ToListAsync(cancellation);
        var batch = new ImportBatch(rows, registers);
        foreach (var file in files.Where(file => JointRegisterDocument.IsOne(file.Bytes, cancellation)))
        {
            var loaded = JointRegisterDocument.Load(file.Bytes, file.Name, cancellation);
            batch.documents.Add(new ReadDocument(file, loaded, null, [.. loaded.Problems]));
        }

        batch.InForce = registers.Find(row => row.Current) is { } row ? JointRegisterDocument.Load(row.Yaml, "", cancellation).Value : null;
        var register = batch.NewRegister?.Register is { } newer ? newer.Value : batch.InForce;
        foreach (var file in files.Where(file => batch.documents.TrueForAll(document => !ReferenceEquals(document.File, file))).ToList())
        {
            batch.AddProcedure(file, register, cancellation);
        }

        batch.CheckTogether();
        batch.CheckCodes();
        batch.CheckFit(register, cancellation);
        batch.TakesAway = batch.InForce is { } before && batch.NewRegister?.Register?.Value is { } after
            && RegisterChanges.TakesAway(before, after) && await shop.Cars.AnyAsync(cancellation);
        return batch;
    }

    /// <summary>True while the shop has exactly the documents that this batch was checked against. Asked with the write lock held.</summary>
    public async Task<bool> StillHoldsAsync(ShopDbContext shop, CancellationToken cancellation)
    {
        var digests = await shop.Procedures.Select(row => row.Digest).Concat(shop.JointRegisters.Select(row => row.Digest)).ToListAsync(cancellation);
        var newest = await shop.Procedures.GroupBy(row => row.Code).Select(code => code.Max(row => row.CurrentSince)).ToListAsync(cancellation);
        return here.SetEquals(digests) && newest.ToHashSet().SetEquals(Rows.GroupBy(row => row.Code).Select(code => code.Max(row => row.CurrentSince))) && current == await shop.JointRegisters.Where(row => row.Current).Select(row => row.Digest).SingleOrDefaultAsync(cancellation);
    }

    /// <summary>Notes that the new register takes joints away and nobody looked.</summary>
    public void RefuseToTakeAway() => NewRegister!.Problems.Add(Error(
        "", "This register takes joints away from cars of this shop", "the lead takes it in on the page Import documents, with a second person who looked at the cars"));

    /// <summary>What became of each document, once it is known whether the batch is sound.</summary>
    public ImportReport Report() => new(
    [
        .. documents.Select(document =>
        {
            var (fate, words) = FateOf(document);
            return new ImportedDocument(document.File.Name, document.Digest, fate, words, document.Problems);
        }),
    ]);

    private void AddProcedure(DocumentFile file, JointRegister? register, CancellationToken cancellation)
    {
        if (register is null)
        {
            documents.Add(new ReadDocument(file, null, null, WithoutRegister(file, cancellation)));
            return;
        }

        var loaded = ProcedureDocument.Load(file.Bytes, file.Name, register, cancellation);
        var read = new ReadDocument(file, null, loaded, [.. loaded.Problems]);
        documents.Add(read);
        if (loaded.Value is { } procedure
            && Rows.Any(row => row.Code == procedure.Code && row.Revision == procedure.Revision && row.Digest != read.Digest))
        {
            read.Problems.Add(Error("revision", $"{procedure.Code} revision {procedure.Revision} is in the shop with another text", "give this text a new revision: a revision never changes"));
        }
    }

    /// <summary>A new code passes for no other: not for one of the shop, not for one of the batch.</summary>
    private void CheckCodes()
    {
        var codes = Rows.Select(row => row.Code).Distinct().ToList();
        foreach (var read in documents.Where(document => document.Procedure?.Value is { } procedure && !codes.Contains(procedure.Code)).ToList())
        {
            var code = read.Procedure!.Value!.Code;
            if (NameLook.FirstAlike(code, codes.Where(other => other != code)) is { } taken)
            {
                read.Problems.Add(Error("code", $"{code} looks like {taken}, the code of another procedure", "give this one a code that nobody takes for it, or write the code as it is in the shop"));
            }

            codes.Add(code);
        }
    }

    /// <summary>By a register with errors a procedure is checked all the same, so that its own errors come in the same round.</summary>
    private List<DocumentProblem> WithoutRegister(DocumentFile file, CancellationToken cancellation)
    {
        if (documents.Find(document => document.Register is not null)?.Register is { } broken)
        {
            var found = broken.Draft is { } draft ? ProcedureDocument.Load(file.Bytes, file.Name, draft, cancellation).Problems : OfText(file, cancellation);
            return [Error("", "The joint register of this batch has errors: this procedure was checked against it as far as it can be read", "put the register right too; what is said here of its joints may go away with that"), .. found.Where(problem => !problem.IsCaution)];
        }

        return [.. OfText(file, cancellation), Error("", "The shop has no joint register yet", "import the register first, or together with this")];
    }

    /// <summary>Without a register only the text as a whole can be judged, such as its encoding.</summary>
    private static IEnumerable<DocumentProblem> OfText(DocumentFile file, CancellationToken cancellation) =>
        ProcedureDocument.Load(file.Bytes, file.Name, NoRegister, cancellation).Problems.Where(problem => problem.Path.Length == 0 && !problem.IsCaution);

    private void CheckTogether()
    {
        foreach (var second in documents.Where(document => document.Register is not null).Skip(1))
        {
            second.Problems.Add(Error("", "A second joint register is in this batch", "the shop has one: import it alone"));
        }

        foreach (var again in documents.Where(document => document.Procedure?.Value is not null)
            .GroupBy(document => document.Procedure!.Value!.Code).SelectMany(same => same.Skip(1)))
        {
            again.Problems.Add(Error("code", $"Another file of this batch is {again.Procedure!.Value!.Code} too", "import one revision after the other"));
        }
    }

    /// <summary>A new register may leave procedures of the shop behind: said, and left to the author.</summary>
    private void CheckFit(JointRegister? register, CancellationToken cancellation)
    {
        if (NewRegister is not { } read || register is null)
        {
            return;
        }

        var replaced = documents.Select(document => document.Procedure?.Value?.Code).ToHashSet();
        foreach (var row in Rows.GroupBy(row => row.Code).Select(code => code.MaxBy(row => row.CurrentSince)!).Where(row => !replaced.Contains(row.Code)))
        {
            if (ProcedureDocument.Load(row.Yaml, row.Code, register, cancellation).Errors.FirstOrDefault() is { } first)
            {
                read.Problems.Add(Error("", $"{row.Code} revision {row.Revision} does not fit this register: line {first.Line}, {first.What}", "import a new revision of it; until then it goes on no car") with { IsCaution = true });
            }
        }
    }

    private (DocumentFate Fate, string Words) FateOf(ReadDocument document)
    {
        var name = document.Procedure?.Value is { } procedure
            ? $"{procedure.Code} “{procedure.Title}”, revision {procedure.Revision}"
            : document.Register?.Value is { } register ? $"joint register “{register.Title}”" : document.File.Name;
        if (document.HasErrors)
        {
            return (DocumentFate.Refused, $"{document.File.Name} has errors and was not imported.");
        }

        if (currentOnes.Contains(document.Digest))
        {
            return (DocumentFate.AlreadyHere, $"{name} is in the shop already with exactly this text; nothing was done.");
        }

        return IsSound
            ? (DocumentFate.Stored, here.Contains(document.Digest) ? $"{name} was in the shop before and is current again." : $"{name} is in the shop and current.")
            : (DocumentFate.NotTaken, $"{name} has no error, but was not imported, because another file has.");
    }

    private static DocumentProblem Error(string path, string what, string next) => new(1, 1, path, false, what, next);
}
