using System.Text.Json.Serialization;

namespace DxAssistant.Conversation.Events;

/// <summary>One entry of a case's append-only log. The state of a case is a fold over these.</summary>
[JsonPolymorphic(TypeDiscriminatorPropertyName = "event")]
[JsonDerivedType(typeof(Opened), "opened")]
[JsonDerivedType(typeof(Said), "said")]
[JsonDerivedType(typeof(ContentChanged), "content-changed")]
[JsonDerivedType(typeof(RoleStated), "role-stated")]
[JsonDerivedType(typeof(SeriesChosen), "series-chosen")]
[JsonDerivedType(typeof(CodeReported), "code-reported")]
[JsonDerivedType(typeof(CodeDropped), "code-dropped")]
[JsonDerivedType(typeof(SymptomReported), "symptom-reported")]
[JsonDerivedType(typeof(StepChosen), "step-chosen")]
[JsonDerivedType(typeof(StepConfirmed), "step-confirmed")]
[JsonDerivedType(typeof(AccessReached), "access-reached")]
[JsonDerivedType(typeof(AccessRefused), "access-refused")]
[JsonDerivedType(typeof(ReadingsGiven), "readings-given")]
[JsonDerivedType(typeof(OutcomeSeen), "outcome-seen")]
[JsonDerivedType(typeof(CheckPassedOver), "check-passed-over")]
[JsonDerivedType(typeof(CheckReopened), "check-reopened")]
[JsonDerivedType(typeof(ContradictionAccepted), "contradiction-accepted")]
[JsonDerivedType(typeof(RepairDone), "repair-done")]
[JsonDerivedType(typeof(RepairPassedOver), "repair-passed-over")]
[JsonDerivedType(typeof(RepairVerified), "repair-verified")]
[JsonDerivedType(typeof(SecondFaultBegun), "second-fault-begun")]
[JsonDerivedType(typeof(Closed), "closed")]
[JsonDerivedType(typeof(TookBack), "took-back")]
[JsonDerivedType(typeof(StartedOver), "started-over")]
[JsonDerivedType(typeof(Replied), "replied")]
public abstract record CaseEvent;
