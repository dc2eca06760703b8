using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Notes that ask for nothing, because all was put right: "readings normal, nothing to add", "closing the ticket".
/// </summary>
internal static class SettledTalk
{
    private static readonly WordPattern Settled = new("""
        nothing needed, nothing to add, nothing to report, not problems to report, not problem to report,
        not issues to report, nothing else needed, closing note, closing the ticket, closing the job, close the ticket,
        close the job, for the record, just noting, put right since, everything within range, all within range,
        perfectly ever since, perfect ever since, fine ever since, good ever since, properly since, not action needed,
        not further action, not wrong here, job closed, already put right, already replaced it with the right,
        job is done, jobs done, packing up, handing over, working as it should, passed its calibration,
        works as it should, all logged, went perfect, went perfectly, went smoothly, went well, first go,
        nothing wrong with any, not wrong with any, true reading down, certificate attached, signed off,
        box on the sheet
        """);

    /// <summary>Words by which a note goes on to a trouble that is left.</summary>
    private static readonly WordPattern Left = new("""
        but, still, however, yet, again, except, until, unless, only, now it, help, why, what
        """);

    // "Fuse is good", "the overload is ok": a result, in no more words than that.
    private static readonly WordPattern Sound = new("""
        is good, is fine, is ok, is okay, is sound, is intact, are good, are fine, are ok, are okay, tests good,
        tests fine, checks out
        """);

    private const int Brief = 5;

    /// <summary>Whether a message only notes that all is well.</summary>
    public static bool Is(RequestWords request) =>
        (Settled.IsIn(request)
            || (request.Count <= Brief && Sound.In(request).Any(end => end.Last == request.Count - 1)))
            && !Left.IsIn(request) && !request.EndsAsQuestion && !Intent.AsksOutright(request);
}
