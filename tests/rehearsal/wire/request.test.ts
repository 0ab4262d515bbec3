import { describe, expect, it } from "vitest";
import { ApiRefusal } from "../../../src/rehearsal/refusal.ts";
import { readParams, routeOf } from "../../../src/rehearsal/wire/request.ts";

const read = (type: string, body: string, query = "") =>
  readParams(new URLSearchParams(query), type, Buffer.from(body));

describe("request paths", () => {
  it("lead to methods, whose names are case-insensitive, and to files", () => {
    expect(routeOf("/bot1:x/SendMessage")).toEqual({
      kind: "method",
      token: "1:x",
      method: "sendmessage",
    });
    expect(routeOf("/bot1%3Ax/getMe")).toMatchObject({ token: "1:x" });
    expect(routeOf("/file/bot1:x/photos/file_1.jpg")).toEqual({
      kind: "file",
      token: "1:x",
      path: "photos/file_1.jpg",
    });
  });

  it.each(["/", "/bot1:x", "/bot1:x/", "/page", "/file/bot1:x/"])("%s leads elsewhere", (path) => {
    expect(routeOf(path)).toEqual({ kind: "other" });
  });
});

describe("request bodies", () => {
  it("may be JSON, a form, multipart or only a query", () => {
    expect(read("application/json", '{"a":"1","b":[2]}').plain()).toEqual({ a: "1", b: [2] });
    expect(read("application/x-www-form-urlencoded", "a=1&b=%5B2%5D").json("b")).toEqual([2]);
    const multipart = '--B\r\ncontent-disposition:form-data;name="a"\r\n\r\nä\r\n--B--';
    expect(read("multipart/form-data; boundary=B", multipart).text("a")).toBe("ä");
    expect(read("", "", "a=x+y").text("a")).toBe("x y");
  });

  it.each([
    ["application/json", "{"],
    ["application/json", "[1]"],
    ["multipart/form-data; boundary=B", "nothing"],
    ["multipart/form-data", "--B--"],
  ])("%s that is not what it says is refused with 400", (type, body) => {
    expect(() => read(type, body)).toThrow(ApiRefusal);
    expect(() => read(type, body)).toThrow(/^400 Bad Request: /);
  });
});
