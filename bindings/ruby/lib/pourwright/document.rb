# frozen_string_literal: true

require "json"
require_relative "library"

module Pourwright
  # Documents: JSON text, or hashes and arrays that stand for it.
  module Document
    # More than any document has.
    DEEPEST = 200

    module_function

    # The JSON text of a document.
    def text(document)
      return utf8(document) || raise(refusal("not-utf8", "", "The text is not UTF-8.", "Convert it first.")) if document.is_a?(String)
      return JSON.generate(checked(document, "", 0), max_nesting: 0) if document.is_a?(Hash) || document.is_a?(Array)

      message = "A document is a Hash or JSON text, not #{document.class}."
      raise refusal("wrong-type", "", message, "Pass a Hash, or the text of a file.")
    end

    # The hash that stands for a JSON text of the library.
    def read(text)
      JSON.parse(text, max_nesting: 0)
    end

    # The result of a request, of what is open. A text is the name of the calculation.
    def answered(call, request, fields, *open)
      request = { "calculate" => request } if request.is_a?(String) || request.is_a?(Symbol)
      request = request.merge(fields) if request.is_a?(Hash)
      text = text(request)
      read(Library.text(call, *open, text, text.bytesize))["result"]
    end

    # The text in UTF-8; nil where it is not text. What is wrong inside is left to the library, which says where.
    def utf8(text)
      text.encoding == Encoding::BINARY ? text.dup.force_encoding(Encoding::UTF_8) : text.encode(Encoding::UTF_8)
    rescue EncodingError
      nil
    end

    def refusal(code, path, message, help)
      Library.refused(Fault.new(code, path, message, help))
    end

    # The document, of which all can be written as JSON.
    def checked(value, path, depth)
      raise refusal("wrong-type", path, "The document has more than #{DEEPEST} levels.", "Does it hold itself?") if depth > DEEPEST

      case value
      when Hash then value.to_h { |name, one| [name_of(name, path), checked(one, step(path, name), depth + 1)] }
      when Array then value.each_with_index.map { |one, index| checked(one, step(path, index), depth + 1) }
      when Symbol then value.name
      when Float then finite(value, path)
      when String then text_of(value, path)
      when Integer, true, false, nil then value
      else raise refusal("wrong-type", path, "A #{value.class} cannot be part of a document.", "Use texts, numbers, booleans, hashes and arrays.")
      end
    end

    def name_of(name, path)
      return text_of(name.to_s, path) if name.is_a?(String) || name.is_a?(Symbol)

      raise refusal("wrong-type", path, "A #{name.class} cannot be a name.", "Use texts or symbols.")
    end

    def text_of(text, path)
      found = utf8(text)
      return found if found&.valid_encoding?

      raise refusal("not-utf8", path, "A text of the document is not UTF-8.", "Convert it first.")
    end

    def finite(number, path)
      return number if number.finite?

      raise refusal("not-finite", path, "A number of the document is not finite.", "Check the calculation that made it.")
    end

    # A step of a path, as RFC 6901 writes it.
    def step(path, name)
      "#{path}/#{name.to_s.gsub("~", "~0").gsub("/", "~1")}"
    end
  end

  # The version of the C library, such as "0.1.0".
  VERSION = Library.call("pour_version").to_s.freeze

  module_function

  # Does one calculation: `calculate("convert", amount: "1 1/4 cup", to: "mL")["value"]`.
  #
  # @param request [String, Hash] The name of the calculation, or the whole request. Its fields are in core/schema/request.json,
  #   those of the result in core/schema/answer.json. For a request as JSON text use `answer_text`.
  # @return [Hash]
  # @raise [Error] All faults of the request, with paths into it.
  def calculate(request, **fields)
    Document.answered("pour_request", request, fields)
  end

  # Answers a request given as JSON text with JSON text: `{"result":...}` or `{"faults":...}`. The text is the same at every
  # door. A faulty request does not raise.
  def answer_text(request)
    unless request.is_a?(String)
      raise Document.refusal("wrong-type", "", "A request is JSON text, not #{request.class}.", "For a Hash use calculate.")
    end

    text = Document.text(request)
    out = Library.cell
    length = Library.cell
    failed = Library.cell
    if Library.call("pour_request", text, text.bytesize, out, length, failed) == Library::CONSTANTS["POUR_OK"]
      return Library.taken(out.ptr, length)
    end

    faults = Library.call("pour_error_json", failed.ptr).to_s.force_encoding(Encoding::UTF_8)
    Library.call("pour_error_free", failed.ptr)
    faults
  end

  # A JSON Schema: "request", "answer", "book", "orders", "actuals", "plan".
  #
  # @raise [Error] With the names, for another one.
  def schema(name)
    unless (name.is_a?(String) || name.is_a?(Symbol)) && !name.to_s.include?("\0")
      raise Document.refusal("wrong-type", "/name", "The name is not a text without NUL.", "Pass \"request\".")
    end

    Document.read(Library.text("pour_schema", name.to_s))
  end
end
