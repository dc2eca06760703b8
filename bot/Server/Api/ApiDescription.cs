using System.Text.Json.Serialization.Metadata;
using DxAssistant.Cases.Accounts;
using DxAssistant.Server.Accounts;
using DxAssistant.Server.Chat;
using Microsoft.AspNetCore.Http.Metadata;
using Microsoft.OpenApi;

namespace DxAssistant.Server.Api;

/// <summary>The description of the API for other programs, made from the endpoints themselves.</summary>
internal static class ApiDescription
{
    /// <summary>Where it is read.</summary>
    public const string Path = "/api/openapi.json";

    private const string Bearer = "token";

    private const string Text = """
        Cases, turns, claims, the work list and the pages of the assistant. Every error is a problem (RFC 9457) whose detail is
        one line that a person can act on. Lists come in pages: the header Link with rel="next" (RFC 8288) names the next one.
        What is read bears an ETag (RFC 9110); given back in If-None-Match it is not sent again, and in If-Match it keeps a
        change from being made to something that others changed meanwhile. A POST that makes something takes an
        Idempotency-Key, and turns, photos and notes of a job bear a turnId of their own: sent again, nothing is made twice.
        """;

    public static void AddTo(IServiceCollection services)
    {
        // The schemas are made by the rules by which the answers are written.
        services.ConfigureHttpJsonOptions(options =>
        {
            options.SerializerOptions.TypeInfoResolver = ChatJson.Options.TypeInfoResolver;
            options.SerializerOptions.DefaultIgnoreCondition = ChatJson.Options.DefaultIgnoreCondition;
        });
        services.AddOpenApi(options =>
        {
            options.ShouldInclude = one => one.ActionDescriptor.EndpointMetadata.OfType<ITagsMetadata>().Any();
            options.AddSchemaTransformer((schema, context, _) => LeaveOut(schema, context.JsonTypeInfo));
            options.AddDocumentTransformer((document, _, _) => Introduce(document));
            options.AddOperationTransformer((operation, context, _) =>
                Secure(operation, context.Document, "/" + context.Description.RelativePath));
        });
    }

    public static void Map(WebApplication app) => app.MapOpenApi(Path);

    // What is null is not written.
    private static Task LeaveOut(OpenApiSchema schema, JsonTypeInfo type)
    {
        foreach (var member in type.Properties.Where(member => member.IsGetNullable))
            schema.Required?.Remove(member.Name);
        return Task.CompletedTask;
    }

    private static Task Introduce(OpenApiDocument document)
    {
        document.Info = new OpenApiInfo { Title = "DxAssistant", Version = "1", Description = Text };
        document.Servers = [];
        document.AddComponent(Bearer, new OpenApiSecurityScheme
        {
            Type = SecuritySchemeType.Http, Scheme = "bearer",
            Description =
                "A token that an administrator made, with what it may do. Not needed while there are no accounts.",
        });
        return Task.CompletedTask;
    }

    private static Task Secure(OpenApiOperation operation, OpenApiDocument? document, string path)
    {
        var door = Doors.Before(path);
        if (door.Reads == TokenScopes.None && door.Writes == TokenScopes.None) return Task.CompletedTask;
        operation.Security =
            [new OpenApiSecurityRequirement { [new OpenApiSecuritySchemeReference(Bearer, document)] = [] }];
        return Task.CompletedTask;
    }
}
