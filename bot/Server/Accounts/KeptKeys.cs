using System.Xml.Linq;
using DxAssistant.Cases.Accounts;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.DataProtection.KeyManagement;
using Microsoft.AspNetCore.DataProtection.Repositories;

namespace DxAssistant.Server.Accounts;

/// <summary>
/// Lets the framework keep the keys of sessions in the book of accounts instead of a folder of one machine.
/// </summary>
internal sealed class KeptKeys(KeyBook book) : IXmlRepository
{
    // The framework would take the folder of the program, which differs from server to server.
    private const string ApplicationName = "dxassistant";

    public static void AddTo(IServiceCollection services, AccountBook book)
    {
        services.AddDataProtection().SetApplicationName(ApplicationName);
        services.Configure<KeyManagementOptions>(options => options.XmlRepository = new KeptKeys(book.Keys));
    }

    public IReadOnlyCollection<XElement> GetAllElements() => [.. book.All().Select(body => XElement.Parse(body))];

    public void StoreElement(XElement element, string friendlyName) =>
        book.Keep(friendlyName, element.ToString(SaveOptions.DisableFormatting));
}
