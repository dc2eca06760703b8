using System.Collections.Immutable;
using System.Security.Cryptography;

namespace DxAssistant.Server.HandOver;

/// <summary>
/// The words of spoken codes: plain things, none of them rude, none taken for another over a bad line.
/// </summary>
internal static class CodeWords
{
    /// <summary>How many words a code has.</summary>
    public const int InCode = 4;

    private const string Words = """
        acorn amber anchor apple arrow autumn badger bamboo banjo barley basket beaver bishop bottle branch bridge
        bronze butter cabin cactus camel candle canyon carpet cedar cherry chimney cinema circle clover cobalt coffee
        copper cotton cricket crystal dahlia denim desert dolphin donkey dragon eagle engine falcon feather fiddle
        finger flamingo forest fossil garden garlic giraffe glacier goblet granite guitar harbor hedge helmet hickory
        igloo indigo island ivory jasmine jigsaw jungle lantern lemon lentil lizard lobster magnet marble meadow
        mirror monday muffin napkin nectar needle nutmeg oasis olive onion orange orchid panda paper pebble
        pickle pillow planet plum pocket poplar potato pumpkin puzzle quartz rabbit radish raven ribbon silver sketch
        spider summer teapot thunder trumpet tulip turtle umbrella violin walnut whistle window yogurt zebra
        """;

    /// <summary>All words, in ordinal order.</summary>
    public static ImmutableArray<string> All { get; } =
        [.. Words.Split([' ', '\n', '\r'], StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)];

    /// <summary>A code that cannot be guessed: words with a blank between.</summary>
    public static string Draw() =>
        string.Join(' ', Enumerable.Range(0, InCode).Select(_ => All[RandomNumberGenerator.GetInt32(All.Length)]));

    /// <summary>A code as it was typed, in the one form it is looked up by; null when it is none.</summary>
    public static string? Read(string typed)
    {
        string[] words = typed.ToLowerInvariant()
            .Split([' ', '-', ',', '.', '+'], StringSplitOptions.RemoveEmptyEntries);
        return words.Length == InCode && words.All(word => All.Contains(word)) ? string.Join(' ', words) : null;
    }
}
