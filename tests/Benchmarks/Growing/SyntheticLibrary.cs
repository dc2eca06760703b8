using System.Text;
using DxAssistant.Benchmarks.Groups;
using DxAssistant.Knowledge.Content;
using DxAssistant.Knowledge.Tests.Content;

namespace DxAssistant.Benchmarks.Growing;

/// <summary>
/// Pages of a made-up library of any size, without a diagnostic, the same at every run: symptoms with words of their
/// own, ten faults behind each, a repair for each fault, and six checks that tell these faults apart.
/// </summary>
/// <remarks>
/// As in a real library no check is about more than a few faults: what grows is the number of symptoms.
/// </remarks>
internal sealed class SyntheticLibrary
{
    /// <summary>Faults behind one symptom.</summary>
    public const int FaultsEach = 10;

    private const int ChecksEach = 6;
    private const int SymptomsOfIndex = 50;

    private static readonly string[] Starts =
        ["ba", "do", "fi", "ge", "hu", "ka", "lo", "mi", "nu", "pe", "ra", "so", "tu", "ve", "wi", "zo"];
    private static readonly string[] Ends = ["ndel", "rkin", "stom", "lvar", "mbor", "ctal", "ppen", "ddor", "ggim",
        "ffal", "rren", "ssov", "ttul", "zzek", "nnib", "lloc"];
    private static readonly string[] Frequencies = ["regular", "occasional", "rare"];

    private readonly int symptoms;
    private uint state = 20_260_101;

    private SyntheticLibrary(int faults) => symptoms = Math.Max(1, faults / FaultsEach);

    /// <summary>The pages.</summary>
    /// <param name="faults">How many faults, to the nearest ten.</param>
    public static ContentFolder Of(int faults) => new SyntheticLibrary(faults).Make();

    /// <summary>What somebody says who has a symptom.</summary>
    public static string Complaint(int symptom) => $"the {Word(symptom)} does not turn";

    /// <summary>The folder with other minutes on one page.</summary>
    public static ContentFolder Edited(ContentFolder folder, int symptom)
    {
        string path = $"checks/probe-{symptom}-0.md";
        ContentFile page = folder.File(path)!;
        return folder.With(page
            with { Text = page.Text.Replace("\nminutes: ", "\nminutes: 1", StringComparison.Ordinal) });
    }

    private ContentFolder Make()
    {
        Dictionary<string, string> texts = GrowingFolder.Tiny();
        texts["phrases.md"] = File.ReadAllText(Path.Combine(RepositoryFolder.Root(), "content", "phrases.md"));
        texts["index.md"] += string.Concat(Enumerable.Range(0, symptoms).Where(IsOfIndex)
            .Select(i => $"- [{Word(i)}](symptoms/stuck-{i}.md)\n"));
        for (int symptom = 0; symptom < symptoms; symptom++) Add(texts, symptom);
        return ContentFolder.Of(texts.Select(page => new ContentFile(page.Key, page.Value)));
    }

    // The index would be longer than a page may be: it links to some symptoms, and each links to the next.
    private bool IsOfIndex(int symptom) => symptom % Math.Max(SymptomsOfIndex, symptoms / 1000) == 0;

    private void Add(Dictionary<string, string> texts, int symptom)
    {
        texts[$"symptoms/stuck-{symptom}.md"] = Symptom(symptom);
        for (int fault = 0; fault < FaultsEach; fault++)
        {
            texts[$"faults/worn-{symptom}-{fault}.md"] = Fault(symptom, fault);
            texts[$"repairs/renew-{symptom}-{fault}.md"] = Repair(symptom, fault);
        }

        for (int check = 0; check < ChecksEach; check++)
            texts[$"checks/probe-{symptom}-{check}.md"] = Check(symptom, check);
    }

    private string Symptom(int symptom)
    {
        var page =
            new StringBuilder($"---\nkind: symptom\nid: stuck-{symptom}\n---\n# The {Word(symptom)} does not turn\n");
        page.Append("See")
            .AppendJoin(',', Enumerable.Range(0, ChecksEach)
                .Select(check => $" [probe {check}](../checks/probe-{symptom}-{check}.md)"));
        bool isLast = symptom + 1 == symptoms || IsOfIndex(symptom + 1);
        page.Append(isLast ? ".\n" : $", [next](stuck-{symptom + 1}.md).\n");
        page.Append(
            $"\n## Said as\n- {Word(symptom)} won't spin\n- {Word(symptom)} stands still\n\n## Causes\n| Fault | How often |\n|---|---|\n");
        for (int fault = 0; fault < FaultsEach; fault++)
            page.Append(
                $"| [{Part(symptom, fault)} worn](../faults/worn-{symptom}-{fault}.md) | {(Draw(3) == 0 ? "usually" : "always")} |\n");
        return page.Append("| [None of these](../faults/none-of-these.md) | seldom |\n").ToString();
    }

    private string Fault(int symptom, int fault) => $"""
        ---
        kind: fault
        id: worn-{symptom}-{fault}
        frequency: {Frequencies[Draw(Frequencies.Length)]}
        part: {Part(symptom, fault)}
        ---
        # {Part(symptom, fault)} worn
        What it is.

        ## Said as
        - {Part(symptom, fault)} worn out

        ## Seen
        It is seen.

        ## Measured
        It is measured.

        ## Proof
        It is proved.

        ## Repair
        - [Repair](../repairs/renew-{symptom}-{fault}.md)

        ## Beware
        - Fingers.

        ## Warranty
        A picture.

        """;

    private string Repair(int symptom, int fault) => $"""
        ---
        kind: repair
        id: renew-{symptom}-{fault}
        minutes: {10 + Draw(50)}
        verify-minutes: 10
        access: [isolated-open]
        who: technician
        parts: [{Part(symptom, fault)}]
        ---
        # Renew the {Part(symptom, fault)}

        ## Steps
        1. Do it.

        ## Verify
        Does the unit run for ten minutes without a code?

        ## Cautions
        - [Live mains](../cautions/live-mains.md)

        ## Sources
        - [Common practice](../sources.md#common-practice)

        """;

    private string Check(int symptom, int check)
    {
        // Each fault is seen by one check, some by two.
        int one = 2 * check % FaultsEach, other = 2 * check < FaultsEach ? one + 1 : 1 + Draw(FaultsEach - 1);
        string rows =
            $"| [{Part(symptom, one)} worn](../faults/worn-{symptom}-{one}.md) | never | always |\n| [{Part(symptom, other)} worn](../faults/worn-{symptom}-{other}.md) | seldom | usually |";
        return $"""
            ---
            kind: check
            id: probe-{symptom}-{check}
            minutes: {2 + Draw(8)}
            access: [{(Draw(2) == 0 ? "isolated-open" : "closed-running")}]
            who: technician
            ---
            # Probe {check} of the {Word(symptom)}

            ## Ask
            Does the {Part(symptom, one)} move by hand?

            ## How
            1. Find the {Part(symptom, one)}.
            2. Move it.

            ## Outcomes
            | Outcome | Answer |
            |---|---|
            | moves | It moves |
            | stuck | It is stuck |

            ## Likelihoods
            | Fault | moves | stuck |
            |---|---|---|
            {rows}
            | every other fault | always | never |

            ## Cautions
            - [Live mains](../cautions/live-mains.md)

            ## Sources
            - [Common practice](../sources.md#common-practice)

            """;
    }

    private static string Part(int symptom, int fault) =>
        $"{Word(symptom)} {Starts[fault]}{Ends[(fault * 5) % Ends.Length]}";

    // Two syllables for the first 256, four for the next 65,280: said by nobody else.
    private static string Word(int symptom) =>
        Starts[symptom % 16] + Ends[symptom / 16 % 16]
            + (symptom < 256 ? "" : Starts[symptom / 256 % 16] + Ends[symptom / 4096 % 16]);

    /// <summary>
    /// Source: the multiplier of Numerical Recipes, 2nd edition, 7.1; of its numbers the high bits vary most.
    /// </summary>
    private int Draw(int below)
    {
        state = (state * 1_664_525) + 1_013_904_223;
        return (int)((ulong)state * (uint)below >> 32);
    }
}
