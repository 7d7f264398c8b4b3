namespace Tendency.Input;

internal enum OutputFormat
{
    Text,
    Csv,
    Json,
}
