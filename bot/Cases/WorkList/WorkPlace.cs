using System.Globalization;

namespace DxAssistant.Cases.WorkList;

/// <summary>A place in a work list, behind one of its lines.</summary>
/// <param name="At">When the case of that line was last added to, as a number of the store's own.</param>
/// <param name="Key">Its series or fault where the list is in the order of one; null where it has none.</param>
public sealed record WorkPlace(long At, string? Key = null)
{
    /// <summary>For an address.</summary>
    public override string ToString() => Key is null
        ? At.ToString(CultureInfo.InvariantCulture) : string.Create(CultureInfo.InvariantCulture, $"{At}-{Key}");

    /// <summary>Reads what <see cref="ToString"/> wrote; none is read from nothing.</summary>
    /// <returns>False when it is no place.</returns>
    public static bool TryRead(string? text, out WorkPlace? place)
    {
        place = null;
        if (string.IsNullOrEmpty(text)) return true;
        int dash = text.IndexOf('-', StringComparison.Ordinal);
        if (!long.TryParse(dash < 0 ? text : text[..dash], NumberStyles.None, CultureInfo.InvariantCulture,
            out long at))
            return false;
        place = new WorkPlace(at, dash < 0 ? null : text[(dash + 1)..]);
        return true;
    }
}
