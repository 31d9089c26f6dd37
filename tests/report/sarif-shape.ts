/**
 * The parts of the SARIF 2.1.0 schema (OASIS, sarif-schema-2.1.0.json) that a findings log uses: what it requires, its
 * enumerations, and that no other properties are known.
 */
const message = {
  type: "object",
  additionalProperties: false,
  required: ["text"],
  properties: { text: { type: "string" } },
};
const bag = { type: "object" };

const physicalLocation = {
  type: "object",
  additionalProperties: false,
  required: ["artifactLocation"],
  properties: {
    artifactLocation: {
      type: "object",
      additionalProperties: false,
      properties: { uri: { type: "string", pattern: "^[^\\s]+$" }, uriBaseId: { type: "string" } },
    },
    region: {
      type: "object",
      additionalProperties: false,
      properties: {
        startLine: { type: "integer", minimum: 1 },
        startColumn: { type: "integer", minimum: 1 },
        endColumn: { type: "integer", minimum: 1 },
      },
    },
  },
};

const location = {
  type: "object",
  additionalProperties: false,
  properties: {
    id: { type: "integer", minimum: -1 },
    physicalLocation,
    logicalLocations: {
      type: "array",
      uniqueItems: true,
      items: {
        type: "object",
        additionalProperties: false,
        properties: { fullyQualifiedName: { type: "string" }, kind: { type: "string" } },
      },
    },
    message,
  },
};

const result = {
  type: "object",
  additionalProperties: false,
  required: ["message"],
  properties: {
    ruleId: { type: "string" },
    ruleIndex: { type: "integer", minimum: -1 },
    level: { enum: ["none", "note", "warning", "error"] },
    message,
    locations: { type: "array", items: location },
    relatedLocations: { type: "array", uniqueItems: true, items: location },
    partialFingerprints: { type: "object", additionalProperties: { type: "string" } },
    suppressions: {
      type: "array",
      uniqueItems: true,
      items: {
        type: "object",
        additionalProperties: false,
        required: ["kind"],
        properties: {
          kind: { enum: ["inSource", "external"] },
          status: { enum: ["accepted", "underReview", "rejected"] },
          justification: { type: "string" },
        },
      },
    },
    properties: bag,
  },
};

export const sarifShape = {
  type: "object",
  additionalProperties: false,
  required: ["version", "runs"],
  properties: {
    $schema: { type: "string" },
    version: { enum: ["2.1.0"] },
    runs: {
      type: "array",
      items: {
        type: "object",
        additionalProperties: false,
        required: ["tool"],
        properties: {
          tool: {
            type: "object",
            additionalProperties: false,
            required: ["driver"],
            properties: {
              driver: {
                type: "object",
                additionalProperties: false,
                required: ["name"],
                properties: {
                  name: { type: "string" },
                  version: { type: "string" },
                  rules: {
                    type: "array",
                    uniqueItems: true,
                    items: {
                      type: "object",
                      additionalProperties: false,
                      required: ["id"],
                      properties: { id: { type: "string" }, shortDescription: message, help: message },
                    },
                  },
                },
              },
            },
          },
          columnKind: { enum: ["utf16CodeUnits", "unicodeCodePoints"] },
          originalUriBaseIds: {
            type: "object",
            additionalProperties: { type: "object", properties: { description: message } },
          },
          results: { type: "array", items: result },
          properties: bag,
        },
      },
    },
  },
};
