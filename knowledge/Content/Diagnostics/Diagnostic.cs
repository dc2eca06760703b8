namespace DxAssistant.Knowledge.Content;

/// <summary>One fault in the content.</summary>
/// <param name="Name">The bad thing in kebab-case, for example <c>missing-source</c>.</param>
/// <param name="Severity">How bad it is.</param>
/// <param name="At">The shortest span that shows it.</param>
/// <param name="Message">Lower case, no full stop, stands alone.</param>
/// <param name="Help">The remedy, when there is one to name.</param>
public sealed record Diagnostic(string Name, Severity Severity, SourceSpan At, string Message, string? Help = null)
    : IComparable<Diagnostic>
{
    /// <summary>The one obvious way to put it right; null when an author has to choose.</summary>
    public Mend? Mend { get; init; }

    /// <summary>Order of a report: path, line, column, then name and message.</summary>
    public int CompareTo(Diagnostic? other)
    {
        if (other is null)
        {
            return 1;
        }

        int order = string.CompareOrdinal(At.Path, other.At.Path);
        order = order != 0 ? order : At.Line.CompareTo(other.At.Line);
        order = order != 0 ? order : At.Column.CompareTo(other.At.Column);
        order = order != 0 ? order : string.CompareOrdinal(Name, other.Name);
        return order != 0 ? order : string.CompareOrdinal(Message, other.Message);
    }

    public static bool operator <(Diagnostic left, Diagnostic right) => left.CompareTo(right) < 0;

    public static bool operator >(Diagnostic left, Diagnostic right) => left.CompareTo(right) > 0;

    public static bool operator <=(Diagnostic left, Diagnostic right) => left.CompareTo(right) <= 0;

    public static bool operator >=(Diagnostic left, Diagnostic right) => left.CompareTo(right) >= 0;
}
