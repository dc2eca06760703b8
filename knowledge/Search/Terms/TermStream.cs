using Lucene.Net.Analysis;
using Lucene.Net.Analysis.TokenAttributes;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>Hands ready terms to Lucene, one position each.</summary>
internal sealed class TermStream : TokenStream
{
    private readonly ICharTermAttribute term;
    private IEnumerator<string>? next;

    public TermStream(IEnumerable<string> terms)
    {
        Terms = terms;
        term = AddAttribute<ICharTermAttribute>();
    }

    /// <summary>What is handed out from the next <see cref="Reset"/> on.</summary>
    public IEnumerable<string> Terms { get; set; }

    public override bool IncrementToken()
    {
        if (next is null || !next.MoveNext())
            return false;
        ClearAttributes();
        term.SetEmpty().Append(next.Current);
        return true;
    }

    public override void Reset()
    {
        base.Reset();
        next?.Dispose();
        next = Terms.GetEnumerator();
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            next?.Dispose();
        base.Dispose(disposing);
    }
}
