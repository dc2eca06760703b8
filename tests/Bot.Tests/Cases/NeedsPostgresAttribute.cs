namespace DxAssistant.Bot.Tests.Cases;

/// <summary>Marks a class whose store tests need PostgreSQL.</summary>
[AttributeUsage(AttributeTargets.Class)]
public sealed class NeedsPostgresAttribute : Attribute;
