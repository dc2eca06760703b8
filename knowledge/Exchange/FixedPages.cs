using System.Collections.Immutable;

namespace DxAssistant.Knowledge.Exchange;

/// <summary>The pages that every folder of content needs, whatever its faults.</summary>
internal static class FixedPages
{
    public const string Index =
        """
        ---
        kind: index
        id: index
        ---
        # Start here
        - [Words](words.md), [sources](sources.md), [phrases](phrases.md), [glossary](glossary.md), [roles](roles.md)
        - [Closed and running](access/closed-running.md)
        - [Isolated and open](access/isolated-open.md)

        """;

    /// <summary>So that a walk can be played before there is a page for a series.</summary>
    public const string AnySeries =
        """
        ---
        kind: series
        id: any-unit
        display: none
        market: °C and kPa
        ---
        # Any unit
        Stands for all units until the first series has a page of its own.

        ## Said as
        - any unit

        ## Ratings
        | Rating | Value | Source |
        |---|---|---|
        | supply | 230 V | [Common practice](../sources.md#common-practice) |

        ## Coverage
        - [Coverage of any unit](../coverage/any-unit.md)

        """;

    public const string AnyCoverage =
        """
        ---
        kind: coverage
        id: any-unit
        start: installation
        register-days: 60
        labour-months: 12
        claim-belief: 80
        ---
        # Coverage of any unit
        Stands for the terms of all units until the first series has its own.

        ## Parts
        | Part class | Months | Registered | Source |
        |---|---|---|---|
        | every other part | 12 | 12 | [Common practice](../sources.md#common-practice) |

        ## Classes
        | Part class | Parts |
        |---|---|

        ## Labour
        | Repair | Minutes | Source |
        |---|---|---|

        ## Claim
        - The readings and the parts that were changed.

        ## Sources
        - [Common practice](../sources.md#common-practice)

        """;

    public const string Words =
        """
        ---
        kind: words
        id: words
        ---
        # Words

        ## Likelihoods
        | Word | Value | Source |
        |---|---|---|
        | always | 0.98 | [Common practice](sources.md#common-practice) |
        | never | 0.01 | [Common practice](sources.md#common-practice) |

        ## Frequencies
        | Word | Value | Source |
        |---|---|---|

        """;

    public const string AllWords =
        """
        ---
        kind: words
        id: words
        ---
        # Words

        ## Likelihoods
        | Word | Value | Source |
        |---|---|---|
        | always | 0.98 | [Common practice](sources.md#common-practice) |
        | usually | 0.9 | [Common practice](sources.md#common-practice) |
        | often | 0.7 | [Common practice](sources.md#common-practice) |
        | sometimes | 0.3 | [Common practice](sources.md#common-practice) |
        | seldom | 0.1 | [Common practice](sources.md#common-practice) |
        | never | 0.01 | [Common practice](sources.md#common-practice) |

        ## Frequencies
        | Word | Value | Source |
        |---|---|---|
        | common | 8 | [Common practice](sources.md#common-practice) |
        | regular | 4 | [Common practice](sources.md#common-practice) |
        | occasional | 2 | [Common practice](sources.md#common-practice) |
        | rare | 1 | [Common practice](sources.md#common-practice) |
        | exceptional | 0.3 | [Common practice](sources.md#common-practice) |

        """;

    public static ImmutableSortedDictionary<string, string> All { get; } = ImmutableSortedDictionary.CreateRange(
        StringComparer.Ordinal,
        [
            KeyValuePair.Create("sources.md",
                """
                ---
                kind: sources
                id: sources
                ---
                # Sources

                ## Common practice
                Common practice, no source.

                """),
            KeyValuePair.Create("phrases.md",
                """
                ---
                kind: phrases
                id: phrases
                ---
                # Phrases

                ## greeting
                To do: write the phrases that the assistant says.

                """),
            KeyValuePair.Create("glossary.md",
                """
                ---
                kind: glossary
                id: glossary
                ---
                # Glossary

                ## Parts
                | Concept | Also said as | Often misspelt |
                |---|---|---|
                | unit | machine | |

                """),
            KeyValuePair.Create("roles.md",
                """
                ---
                kind: roles
                id: roles
                ---
                # Roles

                ## Roles
                | Role | Rank | Name | May do |
                |---|---|---|---|
                | owner | 0 | owner | Look and listen. |
                | technician | 1 | technician | Open covers and measure. |

                """),
            KeyValuePair.Create("access/closed-running.md",
                """
                ---
                kind: access
                id: closed-running
                start: true
                verify: true
                who: owner
                ---
                # Closed and running
                All covers are on.

                ## Steps
                | Do | Reading | Safe when |
                |---|---|---|
                | To do: say how the unit is brought here. | | |

                ## Ways here
                | From | Minutes |
                |---|---|
                | [Isolated and open](isolated-open.md) | 5 |

                """),
            KeyValuePair.Create("access/isolated-open.md",
                """
                ---
                kind: access
                id: isolated-open
                who: technician
                ---
                # Isolated and open
                Switched off, locked, proved dead, then opened.

                ## Steps
                | Do | Reading | Safe when |
                |---|---|---|
                | To do: say how the unit is isolated, locked, discharged and proved dead, with the readings. | | |

                ## Ways here
                | From | Minutes |
                |---|---|
                | [Closed and running](closed-running.md) | 5 |

                """),
        ]);

    /// <summary>The source of numbers nobody has sourced yet.</summary>
    /// <param name="up">The way from the page to the folder of all pages.</param>
    public static string Source(string up) => $"[Common practice]({up}sources.md#common-practice)";
}
