using System.Collections.Immutable;
using DxAssistant.Cases.Log;

namespace DxAssistant.Cases.Claims;

/// <summary>Tells whether a sheet belongs to logs that nobody altered, by replaying them.</summary>
public sealed class SheetVerifier(SheetBuilder builder)
{
    /// <summary>What is wrong with a sheet; empty when nothing is.</summary>
    /// <param name="line">The line at its foot.</param>
    /// <param name="shown">The sheet as it is shown; null when only its line is known.</param>
    /// <param name="claimLog">The log of the claim the line names.</param>
    /// <param name="caseLog">The log of that claim's case.</param>
    public ImmutableArray<string> Verify(
        VerifyLine line, ClaimSheet? shown, ImmutableArray<ClaimEntry> claimLog, ImmutableArray<StoredEvent> caseLog)
    {
        if (claimLog.IsEmpty) return [$"there is no claim {line.Claim}"];
        if (ClaimChain.FirstAltered(line.Claim, claimLog) is { } entry)
            return [FormattableString.Invariant($"entry {entry} of the claim's log was altered")];
        if (shown is not null && !Fits(line, shown))
            return ["what the sheet shows does not fit the line at its foot: the sheet was changed"];
        var kept = claimLog.Select(logged => logged.Event).OfType<ClaimEvent.Readied>().Select(readied => readied.Sheet)
            .OfType<ClaimSheet>()
            .LastOrDefault(sheet => Fits(line, sheet));
        return kept is null
            ? ["no sheet of this claim has this line: the sheet is not from here, or was changed"]
            : Replayed(kept, caseLog);
    }

    /// <summary>What is wrong with what a file says of a claim beside its sheet; empty when nothing is.</summary>
    /// <remarks>The claim may have gone on since the file was written.</remarks>
    public static ImmutableArray<string> Verify(ClaimExport shown, ImmutableArray<ClaimEntry> claimLog)
    {
        if (shown.Log.IsDefaultOrEmpty || shown.Log.Length > claimLog.Length) return [Altered];
        var then = Claim.Of(shown.Id, claimLog[..shown.Log.Length]);
        bool same = shown.Case == then.Case && shown.State == then.State && shown.Unit == then.Unit
            && shown.Override == then.Override
            && shown.Log.Zip(then.Log).All(pair => SameEntry(pair.First, pair.Second));
        return same ? [] : [Altered];
    }

    private const string Altered =
        "what the file says of the claim beside its sheet is not what the claim's log says: the file was changed";

    private static bool SameEntry(ClaimEntry shown, ClaimEntry kept) =>
        shown.Hash == kept.Hash && shown.Sequence == kept.Sequence && shown.At == kept.At && shown.By == kept.By;

    private static bool Fits(VerifyLine line, ClaimSheet sheet) => VerifyLine.Of(line.Claim, sheet) == line;

    private ImmutableArray<string> Replayed(ClaimSheet sheet, ImmutableArray<StoredEvent> log)
    {
        if (log.Length < sheet.Through)
            return [FormattableString.Invariant(
                $"the case has {log.Length} entries, the sheet was built from {sheet.Through}: its log was cut")];
        var then = log[..(int)sheet.Through];
        if (then[^1].Hash != sheet.LogHash) return ["the log of the case was altered after the sheet was made"];
        return builder.Build(sheet.Case, then, sheet.Unit) is SheetAnswer.Built built && SameFacts(built.Sheet, sheet)
            ? [] : ["the replayed log does not give the readings and results of the sheet"];
    }

    // Later pages may call things by other names and have other terms; what was seen and read stays.
    private static bool SameFacts(ClaimSheet again, ClaimSheet sheet) =>
        again.Fault == sheet.Fault && again.Evidence.Length == sheet.Evidence.Length
            && again.Evidence.Zip(sheet.Evidence).All(pair => SameFact(pair.First, pair.Second))
            && (again.ContentVersion != sheet.ContentVersion
                || (again.Part == sheet.Part && again.Belief.Equals(sheet.Belief)));

    // Words that were blanked since, as a person may ask, are no forgery: their digest is still in the log.
    private static bool SameFact(ClaimEvidence again, ClaimEvidence shown) =>
        again.Check == shown.Check && again.Verdict == shown.Verdict && again.At == shown.At
            && again.Readings.SequenceEqual(shown.Readings)
            && (again.Answer == shown.Answer || again.Answer == Veil.Removed);
}
