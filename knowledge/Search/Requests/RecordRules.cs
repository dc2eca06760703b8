using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to write down what nobody measured or did, or to hide a fault from whoever comes next.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class RecordRules
{
    private const string Page = "false-record";

    private static readonly WordPattern Records = new("""
        reading, readings, number, numbers, figure, figures, value, values, date, dates, log, logs, logbook, record, records, report, reports, sheet, sheets,
        certificate, cert, paperwork, weight, weights, microns, pressures, temperatures, superheat, subcooling, megohms, claim, form, forms, invoice, serial, test results
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("backdate, backdating, back date, predate, falsify, falsifying"), null) { OnlyIfMeant = true },
        new(Page, new("make up, make up some, making up, invent, inventing, fake, faking, forge, forging, fudge, fudging, doctor, doctoring, plausible, believable, realistic looking, good looking"), Records)
        {
            OnlyIfMeant = true, Unless = new("doctor surgery, not fake"),
        },
        new(Page, new("write, write down, put, put down, put in, enter, note, log, say, claim, sign, sign off, tick, state, fill in, invoice"),
            new("""
                not measure, not measured, not a gage, not gages, not gage, not a meter, not meter, without measuring, without a gage, not do it, not done,
                not did, not tested, not test, not pulled, not there, not pull, not was there, not been there, let it all go,
                let it go, vented it, blew it off, not recover, not recovered, not weighed, not weigh, skipped, not that it is not, even though it was not
                """))
        {
            Reach = 14, OnlyIfMeant = true, Unless = new("not say, not sign, not tick, will not, refused, refuse, =code, display, error"),
        },
        new(Page, new("certificate, cert, sign, sign off, signature, stamp, paperwork, report"),
            new("not matter, without testing, without a test, without looking, without visiting, without going, not going there, not been there, not visit"))
        {
            Reach = 12, OnlyIfMeant = true,
        },
        new(Page, new("hide, hiding, cover up, conceal, mask, disguise, keep quiet about, not tell, paint over, tape over, cover the"),
            new("""
                =leak, stain, stains, burn, scorch, scorch mark, corrosion, damage, fault, owner about, customer about, inspector, surveyor, buyer, buyers, warranty desk,
                from the owner, from the customer, from the boss, from the office, oil
                """))
        {
            Reach = 6, OnlyIfMeant = true, Unless = new("not tell me, can not tell, could not tell, not tell what, not tell which, not tell where, not tell if, not tell whether"),
        },
    ];
}
