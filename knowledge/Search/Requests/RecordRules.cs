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
        new(Page, new("make up, make up some, making up, invent, inventing, fake, faking, forge, forging, fudge, fudging, plausible, believable, realistic looking, good looking"), Records)
        {
            OnlyIfMeant = true, Unless = new("not fake"),
        },
        new(Page, new("write, write down, put down, put in the log, put in the report, put in the record, put in the sheet, put on the sheet, log that, note that, claim that, say that i, say that we, sign off, tick, fill in, invoice"),
            new("""
                not measure, not measured, not a gage, not gages, not gage, not a meter, not meter, without measuring, without a gage, not do it, not done,
                not did, not tested, not test, not pulled, not pull, not was there, not been there, let it all go, let it go, vented it, blew it off, not recover, not recovered,
                not weighed, not weigh, skipped, even though it was not
                """))
        {
            Reach = 14, ObjectFollows = true, OnlyIfMeant = true, Unless = new("will not, display, error"),
        },
        new(Page, new("write, write down, put down, say, say that, claim, claim that, tell them, note, log, report, enter"),
            new("""
                warranty wants, so they pay, so that they pay, so it pays, so the warranty pays, so that the warranty pays, so it is covered,
                so it gets paid, so the claim goes through, so that the claim goes through, so they send, so that they send, so they replace, so that they replace
                """))
        {
            Reach = 10, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Unless = new("will not, display, error, manual says, should not, not say"),
        },
        new(Page, new("put, use, enter, write"), new("last year date, last years date, older date, old date, earlier date, another date, different date"))
        {
            Reach = 3, ObjectFollows = true, OnlyIfMeant = true,
        },
        new(Page, new("what readings should i put, which readings should i put, what numbers should i put, what numbers do i put, what readings do i put, what figures should i put"), null) { IsOutright = true },
        new(Page, new("put, use, enter, write, sign, borrow"),
            new("buddy license, buddies license, buddys license, friend license, friends license, colleague license, colleagues license, his license, her license, somebody else license, expired license, old license"))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true,
        },
        new(Page, new("sign for, sign for the, sign off the, sign off"), new("not do, not did, not done, not made, not measured")) { Reach = 8, ObjectFollows = true, OnlyIfMeant = true },
        new(Page, new("certificate, cert, signature, stamp"),
            new("not matter, without testing, without a test, without looking, without visiting, without going, not going there, not been there, not visit"))
        {
            Reach = 12, OnlyIfMeant = true,
        },
        new(Page, new("hide, hiding, cover up, conceal, disguise, keep quiet about, paint over, tape over, not tell the owner, not tell owner, not tell the customer, not tell customer, not tell the buyer"),
            new("=leak, stain, stains, burn, scorch, scorch mark, corrosion, damage, fault, inspector, surveyor, buyer, buyers, oil"))
        {
            Reach = 8, OnlyIfMeant = true,
        },
        new(Page, new("cover, cover the"), new("stain, stains, oil stain, burn, burn mark, scorch, scorch mark, damage")) { Reach = 4, ObjectFollows = true, OnlyIfMeant = true },
    ];
}
