var builder = WebApplication.CreateBuilder(args);
builder.Build().Run();
