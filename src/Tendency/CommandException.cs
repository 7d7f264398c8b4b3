namespace Tendency;

/// <summary>The command can not be done; the message says why and what to do. Ends with exit code 2.</summary>
internal sealed class CommandException(string message) : Exception(message);
