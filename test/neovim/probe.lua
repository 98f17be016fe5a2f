-- Runs inside Neovim: waits for findings, asks for a hover, completion and actions, makes a mend, and writes down what came back.
local out = {}
local function finish()
  vim.fn.writefile({ vim.fn.json_encode(out) }, vim.env.PROBE_OUT)
  vim.cmd('qa!')
end

local ok, err = pcall(function()
  local function messages()
    return vim.tbl_map(function(d) return d.code .. ': ' .. d.message end, vim.diagnostic.get(0))
  end
  out.attached = vim.wait(20000, function() return #vim.diagnostic.get(0) > 0 end, 50)
  out.diagnostics = messages()

  local function at(word)
    local row, column = unpack(vim.fn.searchpos(word, 'w'))
    vim.api.nvim_win_set_cursor(0, { row, column - 1 })
    return vim.lsp.util.make_position_params()
  end
  local function ask(method, params)
    for _, answer in pairs(vim.lsp.buf_request_sync(0, method, params, 20000) or {}) do
      if answer.err then error(method .. ': ' .. vim.inspect(answer.err)) end
      return answer.result
    end
  end

  out.hover = ask('textDocument/hover', at('attack')).contents.value
  out.symbols = #ask('textDocument/documentSymbol', { textDocument = vim.lsp.util.make_text_document_params() })
  local result = ask('textDocument/completion', at('radr'))
  out.completion = vim.tbl_map(function(item) return item.label end, result.items or result)

  at('dge')
  local range = vim.lsp.util.make_range_params()
  range.context = { diagnostics = vim.lsp.diagnostic.get_line_diagnostics() }
  local actions = ask('textDocument/codeAction', range)
  out.actions = vim.tbl_map(function(action) return action.title end, actions)
  for _, action in ipairs(actions) do
    if action.isPreferred then vim.lsp.util.apply_workspace_edit(action.edit, 'utf-16') end
  end
  out.mended = vim.api.nvim_buf_get_lines(0, 0, -1, false)
  vim.wait(20000, function() return not vim.tbl_contains(messages(), out.diagnostics[1]) end, 50)
  out.left = messages()
end)
if not ok then out.error = tostring(err) end
finish()
