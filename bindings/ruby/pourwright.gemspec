# frozen_string_literal: true

Gem::Specification.new do |gem|
  gem.name = "pourwright"
  gem.version = "0.2.0"
  gem.summary = "Recipe and batch math for workshops that pour soft plastic to order"
  gem.description = <<~TEXT
    Batch math for small workshops that pour soft-plastic fishing lures to order: doses, salt, shots, heat, sink rates, and the
    plan of a day. Plain Ruby over the C library, by Ruby's own fiddle: no compiler is needed.
  TEXT
  gem.authors = ["The pourwright developers"]
  gem.licenses = ["MIT", "Apache-2.0"]
  gem.required_ruby_version = ">= 3.0"
  gem.add_dependency "fiddle", ">= 1.0"
  gem.add_dependency "json", ">= 2.0"
  gem.files = Dir.chdir(__dir__) { Dir["lib/**/*"].select { |path| File.file?(path) } + %w[README.md LICENSE-MIT LICENSE-APACHE] }
end
