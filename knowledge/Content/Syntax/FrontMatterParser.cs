using System.Collections.Immutable;
using YamlDotNet.Core;
using YamlDotNet.Core.Events;

namespace DxAssistant.Knowledge.Content.Syntax;

/// <summary>Reads front matter: a flat YAML mapping of words, numbers and lists of them, nothing deeper.</summary>
internal sealed class FrontMatterParser
{
    // They look like spaces, and YAML does not take them for such.
    private static readonly char[] Blanks = ['\t', '\u00A0', '\u202F', '\u2007'];

    private readonly int offset;
    private readonly Parser yaml;
    private readonly List<FrontMatterField> fields = [];

    private FrontMatterParser(string text, int offset)
    {
        this.offset = offset;
        yaml = new Parser(new StringReader(text));
    }

    /// <summary>Reads the YAML at <paramref name="body"/> of a page, the lines between the <c>---</c> lines.</summary>
    public static FrontMatter Parse(SourceText source, TextSpan body)
    {
        FrontMatter read = Read(source, body);
        int odd = read.Problem is null ? -1 : source.Slice(body).IndexOfAny(Blanks);
        return odd < 0 ? read : read with
        {
            Problem = source.Text[body.Start + odd] == '\t'
                ? "a tab stands in the front matter"
                : "a non-breaking space stands in the front matter",
            ProblemSpan = new TextSpan(body.Start + odd, 1),
            Help = "write an ordinary space, or nothing",
        };
    }

    private static FrontMatter Read(SourceText source, TextSpan body)
    {
        var end = new TextSpan(body.End, 3);
        var parser = new FrontMatterParser(source.Slice(body), body.Start);
        try
        {
            (string Problem, TextSpan Span)? stop = parser.Read();
            return new FrontMatter([.. parser.fields], stop?.Problem, source.Trim(stop?.Span ?? default), end);
        }
        catch (InvalidOperationException)
        {
            // YamlDotNet 18 throws this, without a place, for some plain words that it cannot split.
            return new FrontMatter([.. parser.fields], "the front matter is not YAML", new TextSpan(body.Start, 0),
                end);
        }
        catch (YamlException bad)
        {
            var at = new TextSpan(Math.Min(body.End, body.Start + (int)bad.Start.Index), 0);
            return new FrontMatter([.. parser.fields], "the front matter is not YAML: " + Sentence(bad.Message), at,
                end);
        }
    }

    private (string Problem, TextSpan Span)? Read()
    {
        yaml.Consume<StreamStart>();
        if (!yaml.TryConsume<DocumentStart>(out _))
        {
            return null;
        }

        if (!yaml.TryConsume<MappingStart>(out _))
        {
            return ("the front matter is not a list of `name: value` lines", SpanOf(yaml.Current!));
        }

        while (!yaml.TryConsume<MappingEnd>(out _))
        {
            if (ReadField() is { } stop)
            {
                return stop;
            }
        }

        return null;
    }

    private (string Problem, TextSpan Span)? ReadField()
    {
        if (!yaml.TryConsume<Scalar>(out Scalar? name))
        {
            return ("a field of the front matter needs a plain name", SpanOf(yaml.Current!));
        }

        if (fields.Any(field => field.Name == name.Value))
        {
            return ($"`{name.Value}` stands twice in the front matter", SpanOf(name));
        }

        bool isList = yaml.TryConsume<SequenceStart>(out _);
        var values = new List<FrontMatterValue>();
        while (isList ? !yaml.TryConsume<SequenceEnd>(out _) : values.Count == 0)
        {
            if (!yaml.TryConsume<Scalar>(out Scalar? value))
            {
                return ($"`{name.Value}` must be a word, a number or a list of them", SpanOf(yaml.Current!));
            }

            values.Add(new FrontMatterValue(value.Value, SpanOf(value)));
        }

        bool blank = !isList && values[0].Text.Length == 0;
        fields.Add(new FrontMatterField(name.Value, SpanOf(name), blank ? [] : [.. values], isList));
        return null;
    }

    // YamlDotNet gives the start of a list or mapping as an empty span; its bracket is one character.
    private TextSpan SpanOf(ParsingEvent part) =>
        new(offset + (int)part.Start.Index, Math.Max(1, (int)(part.End.Index - part.Start.Index)));

    private static string Sentence(string message)
    {
        string line = message.Split('\n')[0].Trim().TrimEnd('.');
        return line.Length == 0 ? "unreadable" : char.ToLowerInvariant(line[0]) + line[1..];
    }
}
