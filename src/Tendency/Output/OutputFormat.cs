namespace Tendency.Output;

internal enum OutputFormat
{
    Text,
    Csv,
    Json,
}
