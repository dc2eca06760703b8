using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Pictures.Plans;

/// <summary>A check or repair of the walk, and where it stands on the page.</summary>
internal sealed record WalkStep
{
    public required string Title { get; init; }

    /// <summary>The access state to bring the unit to before; null when it stands in it.</summary>
    public string? State { get; init; }

    /// <summary>What is asked or what is thought to be at fault; null when the page has no room for it.</summary>
    public string? Note { get; init; }

    public required bool IsRepair { get; init; }

    /// <summary>The page it links to; null when there is none.</summary>
    public string? Page { get; init; }

    public required ImmutableArray<WalkRow> Rows { get; init; }

    public int Number { get; set; }
    public int Column { get; set; }
    public double Top { get; set; }
    public double Height { get; set; }

    /// <summary>The steps to the right of it, then the one below.</summary>
    public IEnumerable<WalkRow> Right => Rows.Where(row => row.Next is not null && !row.IsDown);

    public WalkStep? Below => Rows.FirstOrDefault(row => row.IsDown)?.Next;

    /// <summary>This step and all that follow.</summary>
    public IEnumerable<WalkStep> All =>
        Rows.Where(row => row.Next is not null).SelectMany(row => row.Next!.All).Prepend(this);
}
