using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to write down what nobody measured or did, or to hide a fault from whoever comes next.</summary>
/// <remarks>Common practice, no source.</remarks>
internal static class RecordRules
{
    private const string Page = "false-record";

    private static readonly WordPattern Records = new("""
        reading, readings, number, numbers, figure, figures, value, values, date, dates, log, logs, logbook, record,
        records, report, reports, sheet, sheets, certificate, cert, paperwork, weight, weights, microns, pressures,
        temperatures, superheat, subcooling, megohms, claim, form, forms, invoice, serial, test results
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("backdate, backdating, back date, predate, falsify, falsifying"), null) { OnlyIfMeant = true },
        new(Page, new("""
            make up, make up some, making up, invent, inventing, fake, faking, forge, forging, fudge, fudging,
            plausible, believable, realistic looking, good looking
            """), Records)
        {
            OnlyIfMeant = true, Unless = new("not fake"),
        },
        new(Page, new("""
            write, write down, put down, put in the log, put in the report, put in the record, put in the sheet,
            put on the sheet, log that, note that, claim that, say that i, say that we, sign off, tick, fill in,
            invoice
            """),
            new("""
                not measure, not measured, not a gage, not gages, not gage, not a meter, not meter, without measuring,
                without a gage, not do it, not done, not did, not tested, not test, not pulled, not pull, not was there,
                not been there, let it all go, let it go, vented it, blew it off, not recover, not recovered,
                not weighed, not weigh, skipped, even though it was not
                """))
        {
            Reach = 14, ObjectFollows = true, OnlyIfMeant = true, Unless = new("will not, display, error"),
        },
        new(Page, new("""
            write, write down, put down, say, say that, claim, claim that, tell them, note, log, report, enter
            """),
            new("""
                warranty wants, so they pay, so that they pay, so it pays, so the warranty pays,
                so that the warranty pays, so it is covered, so _ pays, so the _ pays, so that _ pays, so _ will pay,
                so _ covers, so the _ covers, so _ covers it, so both are covered, so its covered, so i get paid,
                so _ approves, so the _ approves, so it gets paid, so the claim goes through,
                so that the claim goes through, so they send, so that they send, so they replace, so that they replace
                """))
        {
            Reach = 10, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Unless = new("""
                will not, display, error, manual says, should not, not say
                """),
        },
        new(Page, new("swap, switch, exchange, change, alter, use, borrow, put, give, enter, another, different"),
            new("""
                serials, serial, serial numbers, serial number, serial nos, dates, install date, date of install,
                nameplates, plates, rating plates, stickers
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                so both, covered, claim, warranty, between the 2, between units, both, from the other, other unit,
                newer, so it is, so that it, falls in, in warranty, still in, get it through, goes through
                """),
            Unless = new("typo, wrong, correct, mistake, mistyped, typed, misread, old one, replaced"),
        },
        new(Page, new("""
            put, use, enter, write
            """), new("""
                last year date, last years date, older date, old date, earlier date, another date, different date
                """))
        {
            Reach = 3, ObjectFollows = true, OnlyIfMeant = true,
        },
        new(Page, new("""
            what readings should i put, which readings should i put, what numbers should i put, what numbers do i put,
            what readings do i put, what figures should i put
            """), null) { IsOutright = true },
        new(Page, new("put, use, enter, write, sign, borrow"),
            new("""
                buddy license, buddies license, buddys license, friend license, friends license, colleague license,
                colleagues license, his license, her license, somebody else license, expired license, old license
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true,
        },
        new(Page, new("""
            sign for, sign for the, sign off the, sign off
            """), new("""
                not do, not did, not done, not made, not measured
                """)) { Reach = 8, ObjectFollows = true, OnlyIfMeant = true },
        new(Page, new("certificate, cert, signature, stamp"),
            new("""
                not matter, without testing, without a test, without looking, without visiting, without going,
                not going there, not been there, not visit
                """))
        {
            Reach = 12, OnlyIfMeant = true,
        },
        new(Page, new("""
            hide, hiding, cover up, conceal, disguise, keep quiet about, paint over, tape over, not tell the owner,
            not tell owner, not tell the customer, not tell customer, not tell the buyer
            """),
            new("""
                =leak, stain, stains, burn, scorch, scorch mark, corrosion, damage, fault, inspector, surveyor, buyer,
                buyers, oil
                """))
        {
            Reach = 8, OnlyIfMeant = true,
        },
        new(Page, new("cover, cover the"), new("""
            stain, stains, oil stain, burn, burn mark, scorch, scorch mark, damage
            """)) { Reach = 4, ObjectFollows = true, OnlyIfMeant = true },
        new(Page, new("copy, copying, reuse, borrow, paste, transfer, carry over, duplicate, repeat, use"),
            new("""
                last job, other job, another job, next door, previous job, last visit, other unit, same readings,
                last year, yesterday, identical unit, sister unit, neighbor, last month, unit beside, other site,
                another site, last time
                """))
        {
            Reach = 8, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true, Also = Records, Unless = new("""
                a copy, the copy, send me, not copy, should not, compare, why
                """),
        },
        new(Page, new("""
            fill in, fill out, fill it in, fill it out, fill, complete, populate, do
            """), new("sheet, form, forms, report, checklist, log, logbook, record, paperwork, certificate, cert"))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                for me, normal values, normal readings, normal numbers, typical values, typical readings,
                typical numbers, standard values, standard readings, good values, any numbers, any values, made up,
                average values, textbook, whatever, nice numbers, good numbers, guess, without going, from memory of
                """),
            Unless = new("how do i, where do i, what goes"),
        },
        new(Page, new("""
            tick, ticking, check off, mark, mark off, pass, sign off, sign
            """), new("""
                all the checks, every check, all checks, all the boxes, every box, all boxes, everything, all of them,
                whole list, whole sheet, all as, the lot, all the steps, every step
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, Unless = new("""
                i did, we did, not tick, passed, do i have to, must i, then
                """),
        },
        new(Page, new("tell, telling, say, say to, report, claim, write, convince, persuade, let"),
            new("""
                manufacturer, maker, factory, supplier, warranty, warranty desk, insurance, insurer, insurance company,
                claims desk, wholesaler, distributor, landlord, adjuster, head office
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true, IsOutright = true,
            Also = new("""
                my mistake, my own mistake, my fault, i broke, i damaged, i dropped, i burnt, i burned, i killed,
                i blew, i fried, i miswired, we broke, we dropped, it was me, was me, our mistake, our fault,
                even though, although, though it, came like that, came broken, arrived broken, was dead on arrival, doa,
                was already, storm, lightning, power surge
                """),
            And = new("mistake, fault, i, we, me, though, although, actually, really, just say, so they, instead"),
            Unless = new("should i tell, do i have to tell, must i, honest, truth, not tell, admit"),
        },
        new(Page, new("bill, billing, charge, charging, invoice, sell, selling, quote, claim for, claim"),
            new("""
                not need, not needed, not fitted, not fit, not used, not use, not replaced, not replace, not changed,
                not do, not did, not done, not even, nothing wrong with, is fine, was fine, still good, not faulty
                """))
        {
            Reach = 10, ObjectFollows = true, OnlyIfMeant = true, Also = new("""
                them, him, her, customer, customers, owner, warranty, for a, for the, for work, for parts, hours,
                compressor, board
                """),
            Unless = new("""
                charge is, gas, refrigerant, kg, grams, low charge, overcharge, not charge, not bill, add charge,
                should not, they billed, he billed, charging the
                """),
        },
        new(Page, new("""
            what fault, which fault, what reason, which reason, what story, what excuse, what do i say,
            what should i say, what do i write, what should i write, what do i tell, what should i tell
            """),
            new("""
                so they, so it, so that they, to get it, approve, approved, pay, pays, paid, covered, accepted,
                to make them, not need, should i say, get away
                """))
        {
            Reach = 10, OnlyIfMeant = true, Also = new("""
                warranty, claim, insurance, bill, approve, approved, pay, pays, paid, covered, charge them, desk,
                manufacturer, get away
                """),
            Unless = new("truth"),
        },
    ];
}
