using Lucene.Net.Analysis;
using Lucene.Net.Analysis.TokenAttributes;

namespace DxAssistant.Knowledge.Search;

/// <summary>Hands ready terms to Lucene, one position each.</summary>
internal sealed class TermStream : TokenStream
{
    private readonly IEnumerable<string> terms;
    private readonly ICharTermAttribute term;
    private IEnumerator<string> next;

    public TermStream(IEnumerable<string> terms)
    {
        this.terms = terms;
        next = terms.GetEnumerator();
        term = AddAttribute<ICharTermAttribute>();
    }

    public override bool IncrementToken()
    {
        if (!next.MoveNext())
            return false;
        ClearAttributes();
        term.SetEmpty().Append(next.Current);
        return true;
    }

    public override void Reset()
    {
        base.Reset();
        next = terms.GetEnumerator();
    }

    protected override void Dispose(bool disposing)
    {
        if (disposing)
            next.Dispose();
        base.Dispose(disposing);
    }
}
