namespace ShopJobs.Domain.Procedures.Documents;

/// <summary>A piece of a document with its place in the text, counted from 1.</summary>
internal abstract record DocumentNode(int Line, int Column, string Path);

/// <summary>A text; empty where nothing was written.</summary>
internal sealed record TextNode(int Line, int Column, string Path, string Text) : DocumentNode(Line, Column, Path);

/// <summary>A list.</summary>
internal sealed record ListNode(int Line, int Column, string Path, IReadOnlyList<DocumentNode> Items) : DocumentNode(Line, Column, Path);

/// <summary>Keys with their values; a key comes once.</summary>
internal sealed record MapNode(int Line, int Column, string Path, IReadOnlyList<MapEntry> Entries) : DocumentNode(Line, Column, Path);

/// <summary>Something that was refused already: nothing more is said about it.</summary>
internal sealed record RefusedNode(int Line, int Column, string Path) : DocumentNode(Line, Column, Path);

/// <summary>One key with its value.</summary>
internal sealed record MapEntry(TextNode Key, DocumentNode Value);
