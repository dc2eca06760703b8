using System.Text.RegularExpressions;

namespace DxAssistant.Knowledge.Glyphs.Finding;

/// <summary>
/// Brings a message that is about a code to the words that the finder knows: slips of dictation, little words between
/// the pieces, other names for a full display. For messages that tell of a code; anywhere else it would see codes in
/// plain talk.
/// </summary>
internal static class SpokenForms
{
    private static readonly (Regex Said, string Meant)[] Forms =
    [
        .. new (string, string)[]
        {
            (@"[—–]", "-"),
            (@"\b(?:all|every(?:thing)?|each|whole|entire|full)\b(?: of| the| single)*(?: (?:on|in|of))?(?: the)? ?(?:bars?|segments?|lines|display|screen|leds?|digits|eights|8s|8's|thing)?(?: (?:on|of) (?:it|the (?:display|screen)))?(?: (?:is|are|was|were|stays?|lights?))?(?: all)? (?:lit|on|lights?|glowing|eights|8s)\b(?: up)?", "88"),
            (@"\b(?:full|all) (?:eights|8s|8's)|\b(?:two|both|pair of) (?:eights|8s|8's)|\bboth digits (?:show(?:ing)?|are|read) (?:an? )?(?:8|eights?)", "88"),
            (@"\bthree (?:eights|8s)\b", "888"),
            (@"\b(?:a )?pair of (?:dashes|lines|bars|hyphens)\b|\btwo (?:short |little |horizontal |middle )*(?:lines|bars|hyphens|strokes)(?: in the middle| across)?|\b(?:only|just) (?:dashes|lines)\b|\bdash and (?:a )?dash\b", "dash dash"),
            (@"\bthree (?:lines|bars|hyphens|strokes)\b", "dash dash dash"),
            (@"\b(letter|number|digit|numeral|character|figure) (?:after|behind|following|next to) (?:the |an? )?([a-z0-9])\b,?(?: (?:is|looks?|seems?|reads?|appears?|like|to be|as))*(?: an?)? ([a-z0-9])\b", "$2 $3"),
            (@"\bhundred and (one|two|three|four|five|six|seven|eight|nine)\b", "one zero $1"),
            (@"\b([a-z]|letter|echo|code|error) (?:fore|for)\b(?! the| a|\s+\w{3,})", "$1 four"),
            (@"\b([a-z]) (?:to|too)$", "$1 two"),
            (@"\b([a-z]) (?:to|too) (code|error|flashing|blinking)\b", "$1 two $2"),
            (@"\b([a-z]) (?:tree|free)\b", "$1 three"), (@"\b([a-z]) ate\b", "$1 eight"),
            (@"\b([a-z]) won\b", "$1 one"),
            (@"\b([a-z]) (?:sevin|sevn)\b", "$1 seven"), (@"\b([a-z]) (?:sicks|sex|six's)\b", "$1 six"),
            (@"\b([a-z]) (?:fiv|fife|hive)\b", "$1 five"),
            (@"\bay (one|two|three|four|five|six|seven|eight|nine|zero|\d)\b", "A $1"),
            (@"\b(\d+)x\b", "$1 times"), (@"\bx ?(\d+)\b", "$1"),
            (@"\b(green|red|amber|yellow|orange|blue|white|run|timer|power|operation|left|right|top|bottom)s?(?: (?:led|lamp|light))? ?[:=] ?(\d+)", "$1 $2"),
            (@"\b(one|two|three|four|five|six|seven|eight|nine|\d+) (green|red|amber|yellow|orange|blue|white)s\b",
                "$1 $2"),
            (@"\b(quick|slow|fast|rapid) (blinks?|flashes)\b", "$2"),
            (@"(?<!\b(?:long|short)\b.*)\b(short|long) (blinks?|flashes)\b(?!.*\b(?:long|short)\b)", "$2"),
            (@"\b((?:one|two|three|four|five|six|seven|eight|nine|ten|\d+) (?:flashes|blinks)),?(?: then)?(?: an?)? pause,?(?: then)? \1", "$1"),
            (@"\b(?:stays on|always on|on all the time|does not blink|doesn't blink|never blinks)\b", "steady"),
            (@"\bpulsing\b|\bpulses\b|\bwinking\b|\bstrobing\b", "flashing"),
            (@"\b(?:maybe|perhaps|probably|possibly|might be|could be|i think|i guess|looks? like|looking like|something like|sort of|kind of|similar to|either)\b(?: an?)?", " "),
            (@"(?<=\b[a-z]) (?:and )?(?:then )?(?:followed by|next to|with|and|then|plus|beside|in front of)(?: then)?(?: an?| the)?(?: (?:letter|number|digit|numeral|figure))?(?= (?:\d|[a-z]\b|zero|one|two|three|four|five|six|seven|eight|nine|oh\b))", " "),
            (@"\blower ?case ([a-z]) (\d)", "$1 $2"), (@"\bupper ?case ([a-z]) (\d)", "$1 $2"),
            (@"(?<=\b[a-z]) (?:the )?(?:number|digit|numeral|letter)(?: an?)? (?=\d|[a-z]\b|zero|one|two|three|four|five|six|seven|eight|nine)", " "),
            (@"\bor (?:(?:an? )?[a-z0-9]|[a-z]\d|can't tell)\b.*$", " "),
            (@"\b([a-z]\d) ?/ ?[a-z]\d\b", "$1"),
            (@"^(?:just|only|a|an|the)(?: (?:lone|single|one|an?|lonely))* (?=[a-z0-9]{1,2}$)", ""),
            (@"^(?:just |only )?(?:a |one )?(?:lone |single |one )?(?:dash|hyphen|minus)$", "-"),
            (@"^an? (?=[b-z0-9]\b)", ""),
            (@"\ban? (?=\d$)", ""),
            (@"(?<=\b[a-z]) (\d) (\d) (\d)$", " $1$2$3"),
            (@"\s{2,}", " "),
        }.Select(form => (new Regex(form.Item1, RegexOptions.IgnoreCase | RegexOptions.CultureInvariant), form.Item2)),
    ];

    public static string Mend(string text) =>
        Forms.Aggregate(DescribedShapes.Resolve(Forms[^1].Said.Replace(text, " ")),
            (mended, form) => form.Said.Replace(mended, form.Meant)).Trim();
}
