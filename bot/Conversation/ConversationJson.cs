using System.Collections.Immutable;
using System.Text.Json;
using System.Text.Json.Serialization;
using DxAssistant.Conversation.Events;
using DxAssistant.Conversation.Messages;
using DxAssistant.Conversation.Replies;
using DxAssistant.Conversation.Sheets;

namespace DxAssistant.Conversation;

/// <summary>The JSON form of events, messages and replies, made at build time so that it also works trimmed.</summary>
[JsonSourceGenerationOptions(
    JsonSerializerDefaults.Web,
    DefaultIgnoreCondition = JsonIgnoreCondition.WhenWritingNull,
    AllowOutOfOrderMetadataProperties = true)]
[JsonSerializable(typeof(CaseEvent))]
[JsonSerializable(typeof(ImmutableArray<CaseEvent>))]
[JsonSerializable(typeof(Message))]
[JsonSerializable(typeof(MessageBody))]
[JsonSerializable(typeof(Reply))]
[JsonSerializable(typeof(CommandWord))]
[JsonSerializable(typeof(string))]
[JsonSerializable(typeof(AwayTurn))]
public sealed partial class ConversationJson : JsonSerializerContext;
