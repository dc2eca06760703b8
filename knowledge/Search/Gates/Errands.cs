using System.Collections.Immutable;
using DxAssistant.Knowledge.Search.Requests;
using DxAssistant.Knowledge.Search.Terms;

namespace DxAssistant.Knowledge.Search.Gates;

/// <summary>
/// Wishes for a shop or an office, which name parts and complain of none: "I'd like to order two packs of filters".
/// </summary>
internal static class Errands
{
    /// <summary>Wishes that say all: "packs of filters" are no trouble of a filter.</summary>
    private static readonly WordPattern Outright = new("""
        like to order, want to order, wish to order, need to order, place an order, like to buy, want to buy,
        need to buy, wish to buy, like to return, want to return, can i return, could i return, can we return,
        send it back, send back a, send back the, still in the box, any deals, deals on, sent me the wrong,
        sent the wrong, ordered the wrong, ordered wrong, unopened, money back, address has changed,
        phone number has changed, change of address, new phone number
        """);

    private static readonly WordPattern Wishes = new("""
        price for a, price of a, price for the, quote me, do you sell, do you stock, where can i buy, where do i buy,
        part no, part number for, part number of, part numbers, lead time, delivery time, price list, best price,
        price on, cost of a, cost for a, discount on, quote for, credit note, order number, covered for, covered by,
        covered under, is it covered, under guarantee, packs of, box of, send me the invoice, copy of the invoice,
        refund for
        """);

    /// <summary>Whether a message is such a wish and tells of no trouble.</summary>
    public static bool Is(RequestWords request, ImmutableArray<Token> tokens) =>
        (Outright.IsIn(request) && !tokens.Any(token => token.IsNegated))
            || (Wishes.IsIn(request)
                && !tokens.Any(token => token.IsNegated
                    || (token.Role == TokenRole.Main && States.Ill.Contains(token.Term))));
}
