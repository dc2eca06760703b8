using System.Collections.Frozen;
using System.Collections.Immutable;
using DxAssistant.Knowledge.Quantities;
using Table = DxAssistant.Knowledge.Quantities.Units;

namespace DxAssistant.Knowledge.Readings.Units;

/// <summary>How people spell and say units: in lower case, without spaces.</summary>
/// <remarks>In the keys, <c>deg</c> stands for °, <c>ohm</c> for Ω and <c>u</c> for µ.</remarks>
internal static class UnitLexicon
{
    private const string Ohms = "ohm ohms omh omhs ohmz ohmios ohsm ohn ohns oms";
    private const string Volts = "v volt volts voltios vlt vlts voltz";
    private const string Amps = "a amp amps ampere amperes ampers";
    private const string Mercury =
        "inhg inofhg inchhg incheshg inchesofhg inchesmercury inchesofmercury inchofmercury \"hg";
    private const string Farads = "f fd farad farads";

    private static readonly FrozenDictionary<string, UnitEntry> Entries = Build();

    /// <summary>The entry of a folded spelling; null if it is no unit.</summary>
    public static UnitEntry? Find(string spelling) => Entries.GetValueOrDefault(spelling);

    private static FrozenDictionary<string, UnitEntry> Build()
    {
        var entries = new Dictionary<string, UnitEntry>(StringComparer.Ordinal);
        foreach ((string spellings, UnitEntry entry) in Electrical().Concat(Others()))
        {
            foreach (string spelling in spellings.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            {
                entries.TryAdd(spelling, entry);
            }
        }
        return entries.ToFrozenDictionary(StringComparer.Ordinal);
    }

    private static IEnumerable<(string Spellings, UnitEntry Entry)> Electrical() =>
    [
        ("k kay kilo", new([Table.KiloOhm], UnitUse.LoneKilo)),
        ("m", new([Table.MegaOhm, Table.MilliOhm], UnitUse.LoneMega)),
        ("meg megs mega", One(Table.MegaOhm)),
        ("r", new([Table.Ohm], UnitUse.Glued)),
        (Ohms, One(Table.Ohm)),
        (Prefixed("k kilo kay kill killo", Ohms) + " kilohm kilohms kiloms", One(Table.KiloOhm)),
        (Prefixed("meg mega megs", Ohms) + " megohm megohms megaohm", One(Table.MegaOhm)),
        (Prefixed("g gig giga", Ohms) + " gigohm gigohms gig gigs giga", One(Table.GigaOhm)),
        (Prefixed("milli", Ohms), One(Table.MilliOhm)),
        (Prefixed("m", Ohms), new([Table.MegaOhm, Table.MilliOhm], UnitUse.MilliOrMega)),
        (Volts + " " + Suffixed(Volts, "ac dc rms acrms"), One(Table.Volt)),
        (WithCurrentKind(Prefixed("milli m", Volts)), One(Table.MilliVolt)),
        (WithCurrentKind(Prefixed("k kilo", Volts)), One(Table.KiloVolt)),
        ("a", new([Table.Ampere], UnitUse.Article)),
        (Amps[2..] + " " + Suffixed(Amps, "ac dc rms"), One(Table.Ampere)),
        (WithCurrentKind(Prefixed("milli m", Amps)), One(Table.MilliAmpere)),
        (WithCurrentKind(Prefixed("u micro", Amps)), One(Table.MicroAmpere)),
        (Prefixed("u micro mic mike", Farads) + " mfd mfds mikes mics micfd", One(Table.MicroFarad)),
        (Prefixed("n nano", Farads), One(Table.NanoFarad)),
        (Prefixed("p pico", Farads), One(Symbol("pF"))),
        ("millifarad millifarads", One(Symbol("mF"))),
        ("micro", IfAsked(Table.MicroFarad)),
        // Old capacitor labels write mF for microfarad.
        ("mf", new([Table.MicroFarad, Symbol("mF")])),
        ("farad farads", One(Table.Farad)),
        ("hz hertz hzs cycles", One(Table.Hertz)), ("khz kilohertz", One(Table.KiloHertz)),
            ("mhz megahertz", One(Symbol("MHz"))),
        ("w watt watts", One(Table.Watt)), ("kw kilowatt kilowatts", One(Table.KiloWatt)),
        ("mw", new([Symbol("mW"), Symbol("MW")], UnitUse.MilliOrMega)),
        ("rpm rpms revs r/min", One(Table.RevolutionsPerMinute)),
    ];

    private static IEnumerable<(string Spellings, UnitEntry Entry)> Others() =>
    [
        ("c degc celsius celcius celsuis centigrade degcelsius degcelcius degcentigrade cdeg", One(Table.Celsius)),
        ("f degf fahrenheit farenheit fahrenheight farenheight ferenheit degfahrenheit degfarenheit degfahrenheight "
            + "fdeg", One(Table.Fahrenheit)),
        ("deg", new([Table.Celsius, Table.Fahrenheit])),
        ("kelvin kelvins degk", One(Table.Kelvin)),
        ("psi psis poundspersquareinch lbspersquareinch lb/in2 lbs/in2", One(Table.PoundPerSquareInch)),
        ("lbs lb pounds pound #", new([Table.PoundPerSquareInch, Symbol("lb")], UnitUse.Pounds)),
        ("psig psigauge", One(Table.PsiGauge)), ("psia psiabsolute psiabs", One(Table.PsiAbsolute)),
        ("kpa kilopascal kilopascals", One(Table.KiloPascal)), ("kpag kpagauge", One(Table.KiloPascalGauge)),
            ("kpaa kpaabs kpaabsolute", One(Table.KiloPascalAbsolute)),
        ("mpa megapascal megapascals", One(Symbol("MPa"))), ("hpa hectopascal hectopascals", One(Symbol("hPa"))),
            ("pa pascal pascals", One(Table.Pascal)),
        ("bar bars", One(Table.Bar)), ("barg bargauge", One(Table.BarGauge)),
            ("bara barabs barabsolute", One(Table.BarAbsolute)), ("mbar mbars millibar millibars", One(Table.MilliBar)),
        // On a compound gauge inches of mercury count down from the air; on a barometer they count up from nothing.
        (Mercury, new([Symbol("inHg"), Table.InchOfMercuryVacuum])),
        (Suffixed(Mercury, "vacuum vac ofvacuum ofvac belowatmosphere belowatmospheric")
            + " inchesofvacuum inchesvacuum",
            One(Table.InchOfMercuryVacuum)),
        ("inwc inw.c inwg iwc inh2o inch2o inchesh2o inchesofh2o inchesofwater incheswater incheswatercolumn "
            + "inchesofwatercolumn incheswc inchwc \"wc \"h2o", One(Symbol("inH₂O"))),
        ("micron microns micronsofmercury micronsofvacuum", One(Table.MicronOfMercury)),
            ("torr mmhg mmofmercury", One(Symbol("Torr"))), ("atm atmospheres", One(Symbol("atm"))),
        ("kg/cm2 kgcm2 kgf/cm2 kgpercm2", One(Symbol("kgf/cm²"))),
        ("% percent pct %rh percentrh percentrelativehumidity %relativehumidity", One(Table.Percent)),
            ("cfm cfms ft3/min cubicfeetperminute cubicfeetaminute", One(Table.CubicFootPerMinute)),
        ("l/s lps", One(Symbol("L/s"))), ("l/min lpm", One(Symbol("L/min"))),
            ("m3/h m3/hr m3h cmh cubicmetersperhour cubicmetresperhour cubicmetersanhour cubicmetresanhour",
                One(Symbol("m³/h"))),
            ("m3/min", One(Symbol("m³/min"))), ("m3/s", One(Table.CubicMeterPerSecond)), ("ppm", One(Symbol("ppm"))),
        ("s sec secs second seconds", IfAsked(Table.Second)), ("min mins minute minutes", IfAsked(Table.Minute)),
            ("h hr hrs hour hours", IfAsked(Table.Hour)), ("ms millisecond milliseconds", IfAsked(Symbol("ms"))),
        ("ft feet foot '", IfAsked(Table.FootLength)), ("meter meters metre metres", IfAsked(Table.Meter)),
            ("mm millimeters millimetres", IfAsked(Table.MilliMeter)), ("inch inches \"", IfAsked(Symbol("in"))),
        ("kg kgs kilogram kilograms kilos", IfAsked(Table.Kilogram)),
        ("g", new([Symbol("g"), Table.GigaOhm], UnitUse.IfAsked)),
            ("gram grams", IfAsked(Symbol("g"))),
            ("oz ounce ounces", IfAsked(Symbol("oz"))),
    ];

    private static UnitEntry One(Unit unit) => new([unit]);

    private static UnitEntry IfAsked(Unit unit) => new([unit], UnitUse.IfAsked);

    private static Unit Symbol(string symbol) =>
        Unit.TryParse(symbol, out Unit? unit) ? unit
            : throw new InvalidOperationException($"{symbol} is not in the table of units");

    private static string Prefixed(string prefixes, string names) =>
        string.Join(' ', from prefix in prefixes.Split(' ') from name in names.Split(' ') select prefix + name);

    private static string Suffixed(string names, string suffixes) =>
        string.Join(' ', from name in names.Split(' ') from suffix in suffixes.Split(' ') select name + suffix);

    private static string WithCurrentKind(string names) => names + " " + Suffixed(names, "ac dc");
}
