using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Requests;

/// <summary>Requests to bring together, spray, breathe in or taste what poisons, burns or etches.</summary>
/// <remarks>
/// Common practice, no source; that bleach and acid give off chlorine is textbook knowledge (from memory).
/// </remarks>
internal static class SubstanceRules
{
    private const string Page = "harmful-substance";

    private static readonly WordPattern Sharp = new("""
        acid, muriatic, muriatic acid, hydrochloric, drain acid, battery acid, brick acid, sulfuric acid, ammonia,
        vinegar, caustic, caustic soda, lye, drain cleaner, drain opener, limescale remover, descaler, toilet cleaner,
        oven cleaner
        """);

    public static readonly ImmutableArray<UnsafeRule> All =
    [
        new(Page, new("""
            bleach, chlorine, hypochlorite, javel
            """), Sharp)
            {
                Reach = 7, IsOutright = true, Unless = new(ToldWords.Told + ", not mix, never, should not"),
            },
        new(Page, new("""
            clean, cleaning, pour, pouring, spray, spraying, flush, flushing, wash, washing, tip, use, put, dip, rinse,
            scrub, soak
            """),
            new("""
                muriatic, muriatic acid, hydrochloric, battery acid, brick acid, drain acid, sulfuric acid,
                caustic soda, lye, oven cleaner, ammonia, drain cleaner, drain opener, toilet cleaner
                """))
        {
            Reach = 5, OnlyIfMeant = true, Unless = new(ToldWords.Told + ", not use, should not"),
        },
        new(Page, new("""
            petrol, gasoline, gas can, paint thinner, thinners, lacquer thinner, paraffin, kerosene, diesel,
            brake cleaner, carb cleaner, white spirit, turpentine, acetone, mek, lighter fluid
            """),
            new("""
                clean, cleaning, pour, spray, flush, wash, rinse, wipe, degrease, degreasing, soak, dip, squirt, scrub,
                get the grease, get the oil
                """))
        {
            Reach = 8, OnlyIfMeant = true, IsOutright = true, Unless = new(ToldWords.Told + ", generator, heater"),
        },
        new(Page, new("""
            taste, tasting, lick, licking, sip, sniff, sniffing, inhale, inhaling, breathe in, huff, take a whiff
            """),
            new("""
                oil, =oil, refrigerant, =refriger, gas, freon, r32, r410a, charge, line, valve, hose, drain water,
                condensate, glycol, port
                """))
        {
            Reach = 4, ObjectFollows = true, OnlyIfMeant = true,
            Unless = new(ToldWords.Told + ", sniffer, if i, did, not inhale, not breathe"),
        },
        new(Page, new("""
            spray oil, penetrating oil, flammable spray, aerosol, hairspray, deodorant, starting fluid, ether
            """),
            new("""
                running, live, hot, energized, powered, power on, while it, sparking, arcing
                """)) { Reach = 9, OnlyIfMeant = true, Unless = new(ToldWords.Told) },
    ];
}
