using System.CommandLine;
using System.Globalization;
using DxAssistant.Cases;
using DxAssistant.Cases.Accounts;
using DxAssistant.Cases.Sqlite;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Commands.Settings;

namespace DxAssistant.Server.Commands.Keeping;

/// <summary>
/// Accounts from the terminal of the machine: how the first administrator comes to be, and the last resort.
/// </summary>
internal sealed class AccountsCommand(Streams streams)
{
    private const string By = "this machine";

    private readonly Option<string?> file = CommonOptions.Accounts();
    private readonly Option<string?> store = StoreOption.Make();
    private readonly Argument<string> name = new("name") { Description = "What the person signs in with." };
    private readonly Argument<string> id = new("id") { Description = "The token's name." };

    private readonly Option<string[]> role = new("--role")
    {
        Description = $"What the person may do: {RoleNames.All<AccountRoles>()}. May be given several times.",
        HelpName = "ROLE", Required = true, AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<string[]> may = new("--may")
    {
        Description = $"What the token allows: {RoleNames.All<TokenScopes>()}. May be given several times.",
        HelpName = "SCOPE", Required = true, AllowMultipleArgumentsPerToken = true,
    };

    private readonly Option<bool> company = new("--company")
    {
        Description = "The person signs in at the company only: no password is kept here.",
    };

    private readonly Option<string> label = new("--for")
    {
        Description = "What the token is for, in a few words.", HelpName = "WORDS", Required = true,
    };

    public Command Make()
    {
        var all = new Command("accounts",
            "Who may sign in. While there is no account, the program is for this machine only.");
        all.Add(Verb("list", "Lists the accounts.", List));
        all.Add(Verb("add", "Adds an account; its password is read from standard input.",
            (desk, call) =>
                Say(desk.Add(By, call.GetValue(name), call.GetValue(role)!,
                    call.GetValue(company) ? null : ReadPassword())), name, role, company));
        all.Add(Verb("password", "Changes a password, read from standard input; the account's sessions end.",
            (desk, call) => Say(desk.SetPassword(By, call.GetValue(name)!, ReadPassword())), name));
        all.Add(Verb("roles", "Changes what an account may do.",
            (desk, call) => Say(desk.SetRoles(By, call.GetValue(name)!, call.GetValue(role)!)), name, role));
        all.Add(Verb("close", "Closes an account; its sessions end.",
            (desk, call) => Say(desk.SetOpen(By, call.GetValue(name)!, open: false)), name));
        all.Add(Verb("open", "Opens a closed account.",
            (desk, call) => Say(desk.SetOpen(By, call.GetValue(name)!, open: true)), name));
        all.Add(Verb("token", "Makes a token for another program and prints its secret, this once.", MakeToken, label,
            may));
        all.Add(Verb("revoke", "Ends a token.", (desk, call) => Say(desk.Revoke(By, call.GetValue(id)!)), id));
        return all;
    }

    private Command Verb(string verb, string does, Func<AccountDesk, ParseResult, int> run, params Symbol[] parts)
    {
        var command = new Command(verb, does) { file, store };
        foreach (var argument in parts.OfType<Argument>()) command.Add(argument);
        foreach (var option in parts.OfType<Option>()) command.Add(option);
        command.SetAction(call => Open(call, makes: verb is "add" or "token", run));
        return command;
    }

    private int Open(ParseResult call, bool makes, Func<AccountDesk, ParseResult, int> run)
    {
        if (!makes && call.GetValue(file) is { } wanted && !File.Exists(wanted))
            return streams.Refuse($"there is no file {wanted}: name the file of the accounts");
        try
        {
            var book = call.GetValue(file) is { } named
                ? SqliteAccounts.Open(named, TimeProvider.System)
                : CasePlace.Of(call.GetValue(store), null).OpenAccounts(TimeProvider.System);
            return run(new AccountDesk(book, new SignIn(book, TimeProvider.System), TimeProvider.System), call);
        }
        catch (CaseFileException error)
        {
            return streams.Refuse(error.Message);
        }
    }

    private int List(AccountDesk desk, ParseResult call)
    {
        foreach (var account in desk.Accounts())
        {
            string state = !account.Open ? "closed" : account.Locked ? "resting after wrong passwords" : "open";
            streams.Out.WriteLine(string.Create(
                CultureInfo.InvariantCulture, $"{account.Name}  {string.Join(", ", account.Roles)}  {state}"));
        }

        return ExitCode.Done;
    }

    private int MakeToken(AccountDesk desk, ParseResult call)
    {
        if (desk.MakeToken(By, AccountDesk.NewTokenId(), call.GetValue(label), call.GetValue(may)!,
            out string? problem) is not { } token)
            return Say(problem);
        streams.Out.WriteLine($"Token {token.Id}. Its secret, shown this once: {token.Secret}");
        return ExitCode.Done;
    }

    // From standard input, so that it stands in no list of commands and no history.
    private string ReadPassword()
    {
        if (Console.IsInputRedirected || streams.In != Console.In) return streams.In.ReadLine() ?? "";
        streams.Error.Write("Password (not shown): ");
        string typed = HiddenLine.Read(() => Console.ReadKey(intercept: true));
        streams.Error.WriteLine();
        return typed;
    }

    private int Say(string? problem)
    {
        if (problem is not null) return streams.Refuse(problem);
        streams.Out.WriteLine("Done.");
        return ExitCode.Done;
    }
}
