# frozen_string_literal: true

require "fiddle"
require_relative "error"

module Pourwright
  # The C library. POURWRIGHT_LIBRARY names its file; without it the system's loader finds it.
  module Library
    PLAIN = RUBY_PLATFORM.include?("darwin") ? "libpourwright.dylib" : "libpourwright.so"
    DECLARATIONS = File.read(File.join(__dir__, "pourwright.cdef.h")).freeze

    # The constants of the header by name.
    CONSTANTS = DECLARATIONS.scan(/^\s+(POUR_\w+) = (\d+),?$/).to_h { |name, number| [name, Integer(number)] }.freeze

    # What is declared of each function: its type and its parameters.
    SIGNATURES = DECLARATIONS.scan(/^(\w[\w *]*?)(pour_\w+)\(([^;{}]*)\);$/).to_h do |type, name, parameters|
      [name, [type, parameters.split(",").map(&:strip)]]
    end.freeze

    @handle = Fiddle.dlopen(ENV.fetch("POURWRIGHT_LIBRARY", PLAIN))
    @functions = {}

    module_function

    # The function `name`.
    def function(name)
      @functions[name] ||= begin
        type, parameters = SIGNATURES.fetch(name)
        parameters = [] if parameters == ["void"]
        Fiddle::Function.new(@handle[name], parameters.map { |one| type_of(one) }, type_of(type))
      end
    end

    # Calls the function `name`.
    def call(name, *arguments)
      function(name).call(*arguments)
    end

    # The type of a declaration for fiddle.
    def type_of(declaration)
      case declaration
      when /\*/ then Fiddle::TYPE_VOIDP
      when /\bdouble\b/ then Fiddle::TYPE_DOUBLE
      when /\bsize_t\b/ then Fiddle::TYPE_SIZE_T
      when /\buint32_t\b/ then -Fiddle::TYPE_INT
      when /\bint32_t\b/ then Fiddle::TYPE_INT
      when /\bvoid\b/ then Fiddle::TYPE_VOID
      else raise ArgumentError, "fiddle passes no #{declaration}"
      end
    end

    # Does a call whose last parameter is the error, and raises that.
    def checked(name, *arguments)
      failed = cell
      status = call(name, *arguments, failed)
      raise failure(status, failed.ptr) unless status == CONSTANTS["POUR_OK"]
    end

    # Memory of this many bytes, set to 0 and freed with its object.
    def memory(bytes)
      made = Fiddle::Pointer.malloc([bytes, 1].max, Fiddle::RUBY_FREE)
      made[0, bytes] = "\0" * bytes
      made
    end

    # The place of a pointer.
    def cell = memory(Fiddle::SIZEOF_VOIDP)

    # The text that a call writes through the pointers after its arguments.
    def text(name, *arguments)
      out = cell
      length = cell
      checked(name, *arguments, out, length)
      taken(out.ptr, length)
    end

    # A text of the library, which is freed.
    def taken(pointer, length)
      pointer[0, length[0, Fiddle::SIZEOF_SIZE_T].unpack1("J")].force_encoding(Encoding::UTF_8)
    ensure
      call("pour_string_free", pointer)
    end

    # The handle that a call writes through the pointer after its arguments, freed with its object.
    def handle(free, name, *arguments)
      out = cell
      checked(name, *arguments, out)
      Fiddle::Pointer.new(out.ptr.to_i, 0, @handle[free])
    end

    # A refusal with these faults.
    def refused(*faults)
      Error.new(faults, CONSTANTS["POUR_REFUSED"])
    end

    def failure(status, failed)
      faults = Array.new(call("pour_error_count", failed)) do |index|
        Fault.new(*%w[code path message help].map { |part| call("pour_error_#{part}", failed, index).to_s.force_encoding(Encoding::UTF_8) })
      end
      Error.new(faults, status)
    ensure
      call("pour_error_free", failed)
    end

    unless call("pour_abi_version") == CONSTANTS["POUR_ABI_VERSION"]
      raise LoadError, "The pourwright library is of another version than this package."
    end
  end
end
