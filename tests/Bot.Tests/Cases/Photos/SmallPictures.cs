namespace DxAssistant.Bot.Tests.Cases.Photos;

/// <summary>Pictures of four by two dots, half red and half blue, as a browser drew them.</summary>
internal static class SmallPictures
{
    public static byte[] Jpeg => Convert.FromBase64String(
        "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeX"
            +
        "BkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAC"
        +
        "AAQDASIAAhEBAxEB/8QAFQABAQAAAAAAAAAAAAAAAAAAAAb/xAAZEAEAAgMAAAAAAAAAAAAAAAAAAgQzgbH/xAAVAQEBAAAAAAAAAAAAAAAAAA"
        +
        "ABBv/EABoRAAAHAAAAAAAAAAAAAAAAAAABAgQzcbH/2gAMAwEAAhEDEQA/AI+znlrgCoawIosA5mXZ6P/Z");

    public static byte[] Png => Convert.FromBase64String(
        "iVBORw0KGgoAAAANSUhEUgAAAAQAAAACCAYAAAB/qH1jAAAAGElEQVR4AWI6w8DwH4QZGM78B2EmBjQAAAAA//+de3JTAAAABklEQVQDALMIBz"
            +
        "GpKU1fAAAAAElFTkSuQmCC");

    public static byte[] Webp => Convert.FromBase64String(
        "UklGRmQAAABXRUJQVlA4WAoAAAAAAAAAAwAAAQAAVlA4IEYAAACwAgCdASoEAAIAAsBMJagCdHIAqgDJAP0ABbtZeFgA/vXzDtZn/y5Pj1sg/f"
            +
        "/+rQ/8FePWyD9/qnw0KlCdWxEDVQmXAAAA");
}
