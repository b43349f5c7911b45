namespace Wainwright.Methods.Retention;

/// <summary>Bodies, and all that holds them to each other and to the van.</summary>
/// <remarks>
/// A chain (a cupboard on a panel that is itself held by brads) is several bodies. What hangs on them and is not looked at
/// rides along rigidly: its mass and centre belong to the body that carries it.
/// </remarks>
/// <param name="Bodies">One or more.</param>
/// <param name="Fixings">Any number; none is an answer too.</param>
/// <param name="Contacts">Any number.</param>
public sealed record Held(IReadOnlyList<HeldBody> Bodies, IReadOnlyList<HeldFixing> Fixings, IReadOnlyList<Contact> Contacts);
