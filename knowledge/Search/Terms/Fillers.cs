using System.Collections.Frozen;

namespace DxAssistant.Knowledge.Search.Terms;

/// <summary>
/// Words without meaning of their own for this trade. Kept apart from negation, which is never filler.
/// </summary>
internal static class Fillers
{
    private const string Plain = """
        a an the this that these those my your our his her their its it i we you he she they me us him them mine one
        ones is are was were be been being am do does did done doing has have had having will would can could should
        shall may might must to of in on at by from for with into onto over under up down about around out as per via
        than then there and or but nor so yet if when while whenever where because since though although however
        except until till after before during what which who whom whose why how just only very really quite too also
        even still again already now today yesterday some any every each all both more most much many few lot lots bit
        kind sort thing things stuff something anything everything get gets getting got go goes going gone went come
        comes came coming make makes made take takes took keep keeps kept put puts let lets see saw seen look looks
        looked looking seem seems seemed say says said tell tells told think guess suppose believe know knows find
        found finds want wants need needs please hi hello hey thanks thank yes yeah yep well anyway maybe probably
        perhaps actually basically literally apparently definitely sure like guy guys mate buddy man sir its customer
        client owner homeowner tenant lady gentleman tech technician installer someone somebody anybody people folks
        wife husband month months year years ago day days morning evening last first next time times unit units system
        machine equipment mini split minisplit ductless ac aircon hvac heatpump whole completely totally fully ever
        here always whatever back away else same other another way place show shows showing shown read reads reading
        readings give gives giving given use used using call called calling help fix old turned
        """;

    private static readonly FrozenSet<string> All =
        Plain.Split((char[]?)null, StringSplitOptions.RemoveEmptyEntries).ToFrozenSet(StringComparer.Ordinal);

    public static bool Contains(string word) =>
        All.Contains(word) || (word.Length > 0 && char.IsDigit(word[0]));
}
